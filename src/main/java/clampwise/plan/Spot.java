package clampwise.plan;

import org.locationtech.jts.geom.Geometry;

/**
 * Where on the roof something is.
 *
 * @param plane name of the plane
 * @param area its outline in the plane's axes [m]; the plane's own where all of it is meant
 * @param whole whether all of a plane is meant
 */
record Spot(String plane, Geometry area, boolean whole) {}
