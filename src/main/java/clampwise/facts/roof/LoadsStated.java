package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the loads of a test can be turned into what the loads on the array are held against.
 *
 * @param test which test of the part
 * @param loads what its loads are said to be, or {@code not stated}
 * @param factorStated whether the test gives the factor that the method of the loads asks for
 * @param factor the factor that the method of the loads asks for
 * @param gives what the test gives and leaves open, in words
 */
public record LoadsStated(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String test,
    String loads,
    boolean factorStated,
    String factor,
    String gives)
    implements Fact {}
