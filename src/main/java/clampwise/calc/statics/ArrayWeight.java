package clampwise.calc.statics;

import clampwise.units.Units;

/**
 * Weight of a module with its share of clamps, attachments and wires.
 *
 * @param n weight of both [N]
 */
public record ArrayWeight(double n) {

  private static final int LINES = 2;

  /**
   * Weight m g.
   *
   * @param massKg mass of module and hardware [kg]
   */
  public static ArrayWeight ofMass(double massKg) {
    return new ArrayWeight(massKg * Units.GRAVITY_M_PER_S2);
  }

  /**
   * Dead load on the area that the module covers, W / A, measured on the slope.
   *
   * <p>Source: definition of a pressure. Holds for modules parallel to the roof.
   *
   * @param areaM2 area of the module [m²]; above 0
   * @return [Pa]
   */
  public double pressurePa(double areaM2) {
    return n / areaM2;
  }

  /**
   * Share of one clamp: half of the weight goes to each supported edge, and the clamps of an edge
   * share evenly.
   *
   * <p>Common practice, no source; a screen. Forces of clamps at unequal places come from statics.
   *
   * @param clampsOnEdge clamps on the edge; 1 or more
   * @return [N]
   */
  public double perClampN(int clampsOnEdge) {
    return n / LINES / clampsOnEdge;
  }
}
