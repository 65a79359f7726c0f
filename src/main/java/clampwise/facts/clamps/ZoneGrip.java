package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How the worst placed clamp of a module sits relative to its clamp zone.
 *
 * @param subject the module
 * @param cause the schedule of its field
 * @param at where the clamp is scheduled
 * @param shown unit of the zone
 * @param module name of the module
 * @param edge its supported edge
 * @param attachment name of the attachment
 * @param fromCornerM distance of the clamp from the nearer corner [m]
 * @param zoneMinM where the zone starts, from the corner [m]
 * @param zoneMaxM where the zone ends, from the corner [m]
 * @param nearestBoundM the end of the zone nearer to the clamp [m]
 * @param better what would bring the clamp into the zone
 */
public record ZoneGrip(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String edge,
    String attachment,
    double fromCornerM,
    double zoneMinM,
    double zoneMaxM,
    double nearestBoundM,
    String better)
    implements Fact {}
