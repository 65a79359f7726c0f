package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The attachments the drawings count in a wind zone, held against the layout.
 *
 * @param zone the zone as the drawings name it
 * @param claimed count on the drawing
 * @param counted count in the layout
 * @param difference between the two, without a sign
 */
public record ZoneCountClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String zone,
    int claimed,
    int counted,
    int difference)
    implements Fact {}
