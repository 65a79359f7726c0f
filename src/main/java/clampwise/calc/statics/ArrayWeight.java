package clampwise.calc.statics;

/**
 * Weight of a module with its share of clamps, attachments and wires.
 *
 * @param massKg mass of both [kg]
 */
public record ArrayWeight(double massKg) {

  /** Standard gravity [m/s²], third General Conference on Weights and Measures, 1901. */
  private static final double GRAVITY = 9.80665;

  private static final int LINES = 2;

  /**
   * Weight m g.
   *
   * @return [N]
   */
  public double n() {
    return massKg * GRAVITY;
  }

  /**
   * Dead load on the area that the module covers, m g / A, measured on the slope.
   *
   * <p>Source: definition of a pressure. Holds for modules parallel to the roof.
   *
   * @param areaM2 area of the module [m²]; above 0
   * @return [Pa]
   */
  public double pressurePa(double areaM2) {
    return n() / areaM2;
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
    return n() / LINES / clampsOnEdge;
  }
}
