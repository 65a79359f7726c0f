package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The rating a calculation uses beside the rating of the side that is really clamped.
 *
 * @param subject the module type in its field, and the direction of the load
 * @param cause the rating the field uses
 * @param at where the side was written
 * @param shown unit of the loads
 * @param type name of the module type
 * @param direction {@code down} or {@code up}
 * @param usedSide side whose rating is used
 * @param clampedSide side that is clamped
 * @param usedPa highest design load of the side used [Pa]
 * @param clampedPa highest design load of the clamped side [Pa]
 */
public record RatingUsed(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String type,
    String direction,
    String usedSide,
    String clampedSide,
    double usedPa,
    double clampedPa)
    implements Fact {}
