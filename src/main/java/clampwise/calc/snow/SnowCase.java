package clampwise.calc.snow;

/**
 * A snow load case of one slope, on the horizontal projection.
 *
 * @param name name of the case
 * @param symbol symbol of the load next to the ridge
 * @param nearRidgePa load next to the ridge [Pa]
 * @param nearRidgeM plan distance from the ridge to which it reaches [m]
 * @param beyondPa load beyond [Pa]
 */
public record SnowCase(
    String name, String symbol, double nearRidgePa, double nearRidgeM, double beyondPa) {

  /** The same load all over the slope. */
  static SnowCase even(String name, String symbol, double pa) {
    return new SnowCase(name, symbol, pa, 0, pa);
  }

  /** Whether the load next to the ridge reaches to a plan distance from it. */
  public boolean isNearRidge(double fromRidgeM) {
    return fromRidgeM <= nearRidgeM;
  }

  /** Load at a plan distance from the ridge [Pa]. */
  public double atPa(double fromRidgeM) {
    return isNearRidge(fromRidgeM) ? nearRidgePa : beyondPa;
  }
}
