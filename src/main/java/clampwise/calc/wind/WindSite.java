package clampwise.calc.wind;

import java.util.Optional;

/**
 * What the velocity pressure asks about a site.
 *
 * @param speedMS basic wind speed [m/s]
 * @param topographic topographic factor, 1 on level ground
 * @param groundFactor ground elevation factor, if it is given
 * @param elevationM ground elevation above sea level, if it is given [m]
 */
public record WindSite(
    double speedMS,
    Exposure exposure,
    double topographic,
    Optional<Double> groundFactor,
    Optional<Double> elevationM) {

  /** Level ground near sea level. */
  public static WindSite level(double speedMS, Exposure exposure) {
    return new WindSite(speedMS, exposure, 1, Optional.empty(), Optional.empty());
  }
}
