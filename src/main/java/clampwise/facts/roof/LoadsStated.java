package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the loads of a test can be turned into allowable loads.
 *
 * @param test which test of the part
 * @param loads what its loads are said to be, or {@code not stated}
 */
public record LoadsStated(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String test,
    String loads,
    boolean factorStated)
    implements Fact {}
