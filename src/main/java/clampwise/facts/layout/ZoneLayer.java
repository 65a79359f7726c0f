package clampwise.facts.layout;

import org.locationtech.jts.geom.Geometry;

/**
 * One zone of a figure before those drawn over it are cut out.
 *
 * @param severity rank; a larger one is more severe
 */
record ZoneLayer(String name, int severity, Geometry area) {}
