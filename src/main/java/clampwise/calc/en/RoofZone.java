package clampwise.calc.en;

import clampwise.calc.Interval;

/**
 * A rectangle of one zone on a plane, in the plane's own axes.
 *
 * @param direction where the wind comes from
 * @param name name of the zone, F to J
 * @param along from the left end of the eave [m]
 * @param up up the slope from the eave [m]
 */
public record RoofZone(WindDirection direction, String name, Interval along, Interval up) {

  /** Whether a point of the plane lies in the zone. */
  public boolean holds(double alongM, double upM) {
    return along.contains(alongM) && up.contains(upM);
  }

  /** Whether the zone shares area with a rectangle of the plane. */
  public boolean overlaps(Interval otherAlong, Interval otherUp) {
    return shareLength(along, otherAlong) && shareLength(up, otherUp);
  }

  private static boolean shareLength(Interval one, Interval two) {
    return one.fromM() < two.toM() && two.fromM() < one.toM();
  }
}
