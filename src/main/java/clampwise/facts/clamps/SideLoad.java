package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The design load of a field beside the best rating of the clamped side.
 *
 * @param subject the module type in its field, and the direction of the load
 * @param at where the design load was written
 * @param shown unit of the design load
 * @param type name of the module type
 * @param side side that is clamped
 * @param direction {@code down} or {@code up}
 * @param wantedPa design load of the field [Pa]
 * @param ratedPa highest design load in the table for that side [Pa]
 */
public record SideLoad(
    Subject subject,
    Span at,
    Unit shown,
    String type,
    String side,
    String direction,
    double wantedPa,
    double ratedPa)
    implements Fact {}
