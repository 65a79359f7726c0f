package clampwise.calc;

/** Rounds lengths that come out of sums, so that a value exactly at its limit compares as equal. */
public final class Snap {

  private static final double STEPS_PER_METRE = 1e7;

  private Snap() {}

  /**
   * A length rounded to a tenth of a micrometre, far below anything measured on a roof and far
   * above the rounding noise of sums.
   *
   * @param lengthM [m]
   * @return the rounded length [m]
   */
  public static double m(double lengthM) {
    return Math.rint(lengthM * STEPS_PER_METRE) / STEPS_PER_METRE;
  }
}
