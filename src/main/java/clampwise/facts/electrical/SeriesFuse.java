package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The fuse of a string, held against the largest that its modules stand.
 *
 * @param circuit its name
 * @param module type of the modules
 * @param deviceA rating of the fuse [A]
 * @param mostA largest series fuse of the module [A]
 */
public record SeriesFuse(
    Subject subject,
    Span at,
    Unit shown,
    String circuit,
    String module,
    double deviceA,
    double mostA)
    implements Fact {}
