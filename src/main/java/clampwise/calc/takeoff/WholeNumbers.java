package clampwise.calc.takeoff;

/** Things that are only sold, packed or cut whole. */
public final class WholeNumbers {

  /** Far above the rounding noise of a quotient, far below any share that is written. */
  private static final double NOISE = 1e-9;

  private WholeNumbers() {}

  /**
   * Spares of a part: the next whole number from a share of what is drawn.
   *
   * @param count parts drawn
   * @param share of spares, such as 0.03
   */
  public static int spares(int count, double share) {
    return up(count * share);
  }

  /** Pallets, drums or lengths that so many things fill, the last one in part. */
  public static int packs(int count, int inEach) {
    return up((double) count / inEach);
  }

  /** The next whole number from a quotient. */
  static int up(double quotient) {
    return (int) Math.ceil(quotient - NOISE);
  }
}
