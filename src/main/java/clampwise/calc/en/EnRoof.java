package clampwise.calc.en;

import java.util.Optional;

/**
 * A plane of a rectangular roof, as EN 1991-1-4 asks for it.
 *
 * @param shape shape of the roof
 * @param pitchRad pitch of the plane; negative where the roof falls to the middle [rad]
 * @param alongM plan size along the eave [m]
 * @param acrossM plan size of the whole building across the eave [m]
 * @param depthM plan distance from the plane's eave to its ridge or high edge [m]
 * @param heightM height h of the roof [m]
 * @param parapetM height of the parapet of a flat roof; a sharp edge if none [m]
 */
public record EnRoof(
    Shape shape,
    double pitchRad,
    double alongM,
    double acrossM,
    double depthM,
    double heightM,
    Optional<Double> parapetM) {

  /** Shape of a roof. */
  public enum Shape {
    FLAT,
    DUOPITCH,
    MONOPITCH
  }

  /** A flat or monopitch roof of one plane. */
  public static EnRoof onePlane(
      Shape shape, double pitchRad, double alongM, double acrossM, double heightM) {
    return new EnRoof(shape, pitchRad, alongM, acrossM, acrossM, heightM, Optional.empty());
  }

  /** A plane of a duopitch roof with its ridge in the middle. */
  public static EnRoof duopitch(double pitchRad, double alongM, double acrossM, double heightM) {
    return new EnRoof(
        Shape.DUOPITCH, pitchRad, alongM, acrossM, acrossM / 2, heightM, Optional.empty());
  }

  /** The same with a parapet. */
  public EnRoof withParapet(double parapetHeightM) {
    return new EnRoof(
        shape, pitchRad, alongM, acrossM, depthM, heightM, Optional.of(parapetHeightM));
  }

  /** Length of the plane up the slope [m]. */
  double upM() {
    return depthM / Math.cos(pitchRad);
  }
}
