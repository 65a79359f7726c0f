package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far a mid or end clamp grips over the frames of a field.
 *
 * @param clamp kind and name of the clamp
 * @param gripM how far it reaches over a frame, less what a gap wider than its own costs [m]
 * @param leastM least grip [m]
 * @param fitting what to use instead
 */
public record ClampGrip(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String clamp,
    double gripM,
    double leastM,
    Optional<Limit> limitFrom,
    Optional<String> fitting)
    implements Fact {}
