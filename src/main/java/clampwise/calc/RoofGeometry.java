package clampwise.calc;

/** Lengths and heights of a sloped roof. Trigonometry; no source needed unless said. */
public final class RoofGeometry {

  private static final double ANGLE_NOISE_RAD = 1e-9;

  private RoofGeometry() {}

  /**
   * Slope angle of a roof pitch.
   *
   * @param rise rise over the run, in any unit
   * @param run run, in the same unit; above 0
   * @return [rad]
   */
  public static double slopeRad(double rise, double run) {
    return Math.atan2(rise, run);
  }

  /**
   * Length in plan of a length measured up the slope.
   *
   * @param upM length on the slope [m]
   * @param slopeRad slope, 0 to below a right angle [rad]
   * @return [m]
   */
  public static double planM(double upM, double slopeRad) {
    return upM * Math.cos(slopeRad);
  }

  /**
   * Length up the slope of a length measured in plan.
   *
   * @param planM length in plan [m]
   * @param slopeRad slope, 0 to below a right angle [rad]
   * @return [m]
   */
  public static double upM(double planM, double slopeRad) {
    return planM / Math.cos(slopeRad);
  }

  /**
   * Rise over a length measured up the slope.
   *
   * @param upM length on the slope [m]
   * @param slopeRad slope, 0 to below a right angle [rad]
   * @return [m]
   */
  public static double riseM(double upM, double slopeRad) {
    return upM * Math.sin(slopeRad);
  }

  /**
   * Mean roof height: the mean of the heights of eave and highest point (ASCE 7-16 and 7-22,
   * section 26.2; from memory).
   *
   * @param eaveM height of the eave above ground [m]
   * @param runM plan length from eave to ridge, or to the high side of a monoslope [m]
   * @param slopeRad slope, 0 to below a right angle [rad]
   * @return [m]
   */
  public static double meanRoofHeightM(double eaveM, double runM, double slopeRad) {
    return eaveM + runM * Math.tan(slopeRad) / 2;
  }

  /**
   * Roof height h of the wind provisions: the eave's height up to a slope of 10 degrees, else the
   * mean roof height (ASCE 7-16 and 7-22, section 26.2; second-hand).
   *
   * @param eaveUpToRad slope up to which the height of the eave counts [rad]
   * @param eaveM height of the eave above ground [m]
   * @param runM plan length from eave to ridge, or to the high side of a monoslope [m]
   * @param slopeRad slope, 0 to below a right angle [rad]
   * @return [m]
   */
  public static double windHeightM(double eaveUpToRad, double eaveM, double runM, double slopeRad) {
    return isEaveHeight(eaveUpToRad, slopeRad) ? eaveM : meanRoofHeightM(eaveM, runM, slopeRad);
  }

  /** Whether the height of the eave counts as height h, see {@link #windHeightM}. */
  public static boolean isEaveHeight(double eaveUpToRad, double slopeRad) {
    return slopeRad <= eaveUpToRad + ANGLE_NOISE_RAD;
  }
}
