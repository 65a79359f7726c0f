package clampwise.calc.takeoff;

/**
 * How rails would be laid under modules.
 *
 * @param railsPerRow rails under a row of modules
 * @param spanM widest spacing of a rail's attachments [m]
 * @param cantileverM longest rail past its last attachment [m]
 * @param pastModulesM rail past the last module, at each end [m]
 * @param stockM length in which rails are delivered [m]
 */
public record RailRules(
    int railsPerRow, double spanM, double cantileverM, double pastModulesM, double stockM) {

  private static final double NOISE = 1e-9;

  /**
   * These rules where a rail is only held at seams: the span is rounded down to whole pitches, and
   * is one pitch where not even one fits.
   *
   * @param pitchM distance of the seams [m]
   */
  public RailRules atSeams(double pitchM) {
    double pitches = Math.max(1, Math.floor(spanM / pitchM + NOISE));
    return new RailRules(railsPerRow, pitches * pitchM, cantileverM, pastModulesM, stockM);
  }
}
