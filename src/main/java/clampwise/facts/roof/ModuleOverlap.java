package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far a module lies over another one.
 *
 * @param module one module, or how many modules of a field lie over no other
 * @param other the other module
 * @param overlapM the smaller extent of the area they share [m]
 * @param mostM how much they may, 0 [m]
 */
public record ModuleOverlap(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String other,
    double overlapM,
    double mostM)
    implements Fact {}
