package clampwise.calc.en;

/**
 * Wind pressure on a zone.
 *
 * @param zone the zone on the plane
 * @param suctionPa away from the surface, negative or zero [Pa]
 * @param pressurePa toward the surface, positive or zero [Pa]
 */
public record ZonePressure(RoofZone zone, double suctionPa, double pressurePa) {}
