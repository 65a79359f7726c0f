package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The slope of a plane, against the least for how its covering is built.
 *
 * @param plane name of the plane
 * @param covering name of its covering
 * @param built how that is built
 * @param slopeRad its slope [rad]
 * @param leastRad least slope for that [rad]
 */
public record SlopeOfCovering(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String covering,
    String built,
    double slopeRad,
    double leastRad,
    Optional<Limit> limitFrom)
    implements Fact {}
