package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The limit state of the loads beside that of the strength they are held against.
 *
 * @param part seam clamp or rib bracket
 * @param test which test of it holds here
 * @param loads what the loads are: service or factored
 * @param strength what the stated strength is
 * @param remedy what to do where the two differ
 * @param mixed whether the two belong to different limit states
 */
public record LimitStates(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String part,
    String test,
    String loads,
    String strength,
    String remedy,
    boolean mixed)
    implements Fact {}
