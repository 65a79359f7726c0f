package clampwise.plan;

import java.util.Arrays;

/**
 * The scale of a drawing. Metric steps are those of ISO 5455 (from memory) with the usual ones
 * between them; imperial steps are the usual fractions of an inch to a foot, then an inch to so
 * many feet (common practice, no source).
 *
 * @param denominator how many times larger the roof is than the drawing
 * @param words how the scale is written on the sheet
 */
record DrawingScale(double denominator, String words) {

  private static final double[] METRIC = {
    5, 10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 2500, 5000
  };
  private static final DrawingScale[] IMPERIAL = {
    new DrawingScale(4, "3 in = 1 ft (1:4)"),
    new DrawingScale(8, "1 1/2 in = 1 ft (1:8)"),
    new DrawingScale(12, "1 in = 1 ft (1:12)"),
    new DrawingScale(16, "3/4 in = 1 ft (1:16)"),
    new DrawingScale(24, "1/2 in = 1 ft (1:24)"),
    new DrawingScale(32, "3/8 in = 1 ft (1:32)"),
    new DrawingScale(48, "1/4 in = 1 ft (1:48)"),
    new DrawingScale(64, "3/16 in = 1 ft (1:64)"),
    new DrawingScale(96, "1/8 in = 1 ft (1:96)"),
    new DrawingScale(128, "3/32 in = 1 ft (1:128)"),
    new DrawingScale(192, "1/16 in = 1 ft (1:192)"),
    feet(20),
    feet(30),
    feet(40),
    feet(50),
    feet(60),
    feet(100),
    feet(200),
    feet(400)
  };

  private static DrawingScale feet(int feet) {
    return new DrawingScale(12 * feet, "1 in = " + feet + " ft (1:" + 12 * feet + ")");
  }

  private static DrawingScale metric(double denominator) {
    return new DrawingScale(denominator, "1:" + Math.round(denominator));
  }

  /**
   * The largest usual scale at which something fits.
   *
   * @param wideM its extent across the sheet [m]
   * @param highM its extent along the sheet [m]
   * @param room room for it on the sheet, as the lower right corner of a box at the origin
   */
  static DrawingScale fitting(double wideM, double highM, Point room, boolean imperial) {
    double least = Math.max(wideM * 1000 / room.xMm(), highM * 1000 / room.yMm());
    return steps(imperial)
        .filter(scale -> scale.denominator >= least)
        .findFirst()
        .orElseGet(() -> metric(Math.ceil(least / 1000) * 1000));
  }

  private static java.util.stream.Stream<DrawingScale> steps(boolean imperial) {
    return imperial
        ? Arrays.stream(IMPERIAL)
        : Arrays.stream(METRIC).mapToObj(DrawingScale::metric);
  }

  /** Millimetres of the sheet for a metre of the roof. */
  double mmPerM() {
    return 1000 / denominator;
  }
}
