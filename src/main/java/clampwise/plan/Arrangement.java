package clampwise.plan;

/**
 * Where the parts of a sheet stand: the plan above or beside the strip that explains it, whichever
 * lets the plan be larger.
 *
 * @param room width and height that the plan may take
 * @param head where the title begins
 * @param detail where the detail begins
 * @param legend where the legend begins
 * @param legendRows rows of a column of the legend
 * @param texts where the lines at the end stand; the last of them above it
 */
record Arrangement(
    Point room, Point head, Point detail, Point legend, int legendRows, Point texts) {

  /** Where the upper left corner of the plan lies. */
  static final Point CORNER = new Point(30, 24);

  private static final Arrangement BESIDE =
      new Arrangement(
          new Point(272, 238),
          new Point(316, 18),
          new Point(316, 45),
          new Point(316, 146),
          28,
          new Point(316, 282));

  private static final Arrangement ABOVE =
      new Arrangement(
          new Point(366, 132),
          new Point(20, 190),
          new Point(126, 184),
          new Point(232, 190),
          21,
          new Point(20, 282));

  /** The arrangement for something to be drawn. */
  static Arrangement of(double wideM, double highM) {
    return ABOVE.least(wideM, highM) < BESIDE.least(wideM, highM) ? ABOVE : BESIDE;
  }

  private double least(double wideM, double highM) {
    return Math.max(wideM / room.xMm(), highM / room.yMm());
  }
}
