package clampwise.calc;

/**
 * Widths of the wind zones of a roof for components and cladding, ASCE 7-16 and 7-22, figures
 * 30.3-2A to 30.3-5B (buildings of h up to 60 ft).
 */
public final class ZoneWidth {

  private static final double FOOT_M = 0.3048;
  private static final double HIGHEST_M = 60 * FOOT_M;
  private static final double WIDE_BUILDING_M = 300 * FOOT_M;

  /** The least dimension a, 3 ft [m]. */
  public static final double LEAST_A_M = 3 * FOOT_M;

  private static final double ANGLE_NOISE_RAD = 1e-9;

  private ZoneWidth() {}

  /** Shape of the roof. */
  public enum Shape {
    GABLE,
    HIP,
    MONOSLOPE,
    FLAT
  }

  /**
   * A building as the figures ask for it.
   *
   * @param shape shape of the roof
   * @param slopeRad slope [rad]
   * @param leastPlanM least horizontal dimension of the building [m]
   * @param heightM height h: the eave's up to 10 degrees, else the mean roof height [m]
   */
  public record Roof(Shape shape, double slopeRad, double leastPlanM, double heightM) {}

  /**
   * Zone widths in plan.
   *
   * @param figure number of the figure
   * @param edgeM width of the edge zone: a, or 0.6 h of a low-slope roof [m]
   * @param cornerM width of the corner's legs: a, or 0.2 h of a low-slope roof [m]
   */
  public record Widths(String figure, double edgeM, double cornerM) {}

  /**
   * Widths of the edge and corner zones.
   *
   * <p>Flat roofs and slopes up to 7 degrees (monoslope roofs: up to 3 degrees, from memory):
   * figure 30.3-2A, edge zone 0.6 h wide, corner legs 0.6 h long and 0.2 h wide. Steeper: a = 0.1
   * of the least horizontal dimension or 0.4 h, whichever is less, but not less than 0.04 of the
   * least dimension or 3 ft; where the slope is at most 7 degrees and the least dimension above 300
   * ft, a is at most 0.8 h. Second-hand for both editions, which agree; the rule for a was read in
   * the worked case of a building of 60 ft by 100 ft, h = 20 ft, a = 6 ft.
   *
   * <p>Valid for h up to 60 ft; gable and hip roofs up to 45 degrees, monoslope roofs up to 30.
   *
   * @param roof the building [m, rad]
   * @return widths in plan [m], or why the figures do not apply
   */
  public static Outcome<Widths> of(Roof roof) {
    if (roof.heightM() > HIGHEST_M + 1e-9) {
      return no("the zone figures hold up to a height of 60 ft");
    }
    if (isLowSlope(roof)) {
      return new Outcome.Result<>(
          new Widths("30.3-2A", 0.6 * roof.heightM(), 0.2 * roof.heightM()));
    }
    return switch (roof.shape()) {
      case FLAT -> no("a flat roof has a slope of at most 7 degrees");
      case MONOSLOPE -> sloped(roof, 30, isUpTo(roof, 10) ? "30.3-5A" : "30.3-5B");
      case GABLE -> sloped(roof, 45, gableFigure(roof));
      case HIP -> sloped(roof, 45, hipFigure(roof));
    };
  }

  /**
   * The dimension a of the zone figures, see {@link #of}.
   *
   * @param roof the building [m, rad]
   * @return a [m]
   */
  public static double aM(Roof roof) {
    double leastM = roof.leastPlanM();
    double usualM = Math.min(0.1 * leastM, 0.4 * roof.heightM());
    double aM = Math.max(usualM, Math.max(0.04 * leastM, LEAST_A_M));
    return isLowAndWide(roof) ? Math.min(aM, 0.8 * roof.heightM()) : aM;
  }

  /** Whether a is at most 0.8 h: a slope of at most 7 degrees and wider than 300 ft. */
  public static boolean isLowAndWide(Roof roof) {
    return isUpTo(roof, 7) && roof.leastPlanM() > WIDE_BUILDING_M;
  }

  private static boolean isLowSlope(Roof roof) {
    return isUpTo(roof, roof.shape() == Shape.MONOSLOPE ? 3 : 7);
  }

  private static Outcome<Widths> sloped(Roof roof, int mostDegrees, String figure) {
    double aM = aM(roof);
    return isUpTo(roof, mostDegrees)
        ? new Outcome.Result<>(new Widths(figure, aM, aM))
        : no("the zone figures of this roof shape hold up to " + mostDegrees + " degrees");
  }

  private static String gableFigure(Roof roof) {
    return isUpTo(roof, 20) ? "30.3-2B" : isUpTo(roof, 27) ? "30.3-2C" : "30.3-2D";
  }

  private static String hipFigure(Roof roof) {
    return isUpTo(roof, 20) ? "30.3-2E" : isUpTo(roof, 27) ? "30.3-2G" : "30.3-2H";
  }

  private static boolean isUpTo(Roof roof, double degrees) {
    return roof.slopeRad() <= Math.toRadians(degrees) + ANGLE_NOISE_RAD;
  }

  private static Outcome<Widths> no(String reason) {
    return new Outcome.NotApplicable<>(reason);
  }
}
