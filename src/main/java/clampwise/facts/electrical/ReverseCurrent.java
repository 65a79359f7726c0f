package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The current that strings in parallel drive back into one of them that failed.
 *
 * @param circuit its name
 * @param inParallel strings joined in it
 * @param fused whether each string has a fuse
 * @param reverseA current of all the others [A]
 * @param module type of the modules
 * @param mostA largest series fuse of the module [A]
 */
public record ReverseCurrent(
    Subject subject,
    Span at,
    Unit shown,
    String circuit,
    int inParallel,
    boolean fused,
    double reverseA,
    String module,
    double mostA)
    implements Fact {}
