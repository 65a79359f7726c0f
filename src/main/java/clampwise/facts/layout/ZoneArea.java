package clampwise.facts.layout;

import java.util.Comparator;
import org.locationtech.jts.geom.Geometry;

/**
 * A wind zone on a plane.
 *
 * @param name zone name of the figure, such as {@code 2e}
 * @param severity rank; a larger one is more severe
 * @param area where it is, in the plane's axes [m]
 * @param figure document, edition and figure it was drawn from
 */
public record ZoneArea(String name, int severity, Geometry area, String figure) {

  /** The more severe zone before the milder one. */
  static final Comparator<ZoneArea> WORST_FIRST =
      (one, other) -> Integer.compare(other.severity, one.severity);
}
