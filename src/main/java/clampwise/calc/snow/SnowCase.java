package clampwise.calc.snow;

/**
 * A snow load case of one slope, on the horizontal projection.
 *
 * @param name name of the case
 * @param nearRidgePa load next to the ridge [Pa]
 * @param nearRidgeM plan distance from the ridge to which it reaches [m]
 * @param beyondPa load beyond [Pa]
 */
public record SnowCase(String name, double nearRidgePa, double nearRidgeM, double beyondPa) {

  /** The same load all over the slope. */
  static SnowCase even(String name, double pa) {
    return new SnowCase(name, pa, 0, pa);
  }

  /** Load at a plan distance from the ridge [Pa]. */
  public double atPa(double fromRidgeM) {
    return fromRidgeM <= nearRidgeM ? nearRidgePa : beyondPa;
  }
}
