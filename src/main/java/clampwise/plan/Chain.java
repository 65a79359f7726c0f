package clampwise.plan;

import clampwise.plan.Drawn.Run;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** A chain of dimensions: a line with ticks, and the distance between each two of them. */
final class Chain {

  private static final double TICK_MM = 0.9;
  private static final double TIER_MM = 2.3;
  private static final double LEAST_M = 0.001;

  private final Canvas canvas;
  private final double acrossMm;
  private final Unit unit;
  private final double[] otherSideEndsMm = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};

  /**
   * A chain.
   *
   * @param acrossMm where its line lies on the sheet, down or right
   */
  Chain(Canvas canvas, double acrossMm, Unit unit) {
    this.canvas = canvas;
    this.acrossMm = acrossMm;
    this.unit = unit;
  }

  /** Distances along the eave. */
  void along(List<Double> placesM, Frame frame) {
    List<Point> points = new ArrayList<>();
    placesM.forEach(m -> points.add(new Point(frame.at(m, 0).xMm(), acrossMm)));
    draw(placesM, points, 0);
  }

  /** Distances up the slope. */
  void up(List<Double> placesM, Frame frame) {
    List<Point> points = new ArrayList<>();
    placesM.forEach(m -> points.add(new Point(acrossMm, frame.at(0, m).yMm())));
    draw(placesM, points, 90);
  }

  private void draw(List<Double> placesM, List<Point> points, double turnDeg) {
    if (points.size() < 2) {
      return;
    }
    List<Run> runs = new ArrayList<>();
    runs.add(new Run(List.of(points.get(0), points.get(points.size() - 1)), false));
    for (Point point : points) {
      runs.add(
          new Run(List.of(point.plus(-TICK_MM, TICK_MM), point.plus(TICK_MM, -TICK_MM)), false));
    }
    canvas.runs(Style.DIMENSION, runs, About.NOTHING);
    for (int i = 1; i < points.size(); i++) {
      text(placesM.get(i) - placesM.get(i - 1), points.get(i - 1), points.get(i), turnDeg);
    }
  }

  /**
   * Beside the line; where that is too short for it, at its other side, in two tiers, if there is
   * room.
   */
  private void text(double lengthM, Point from, Point to, double turnDeg) {
    String text = lengthM < LEAST_M ? "" : QuantityPrint.text(lengthM, unit);
    double widthMm = Letters.widthMm(text, Style.SMALL_TEXT);
    Point middle = from.between(to);
    if (text.isEmpty()) {
      return;
    }
    if (widthMm < from.to(to)) {
      Point base = turnDeg == 0 ? middle.plus(0, -0.8) : middle.plus(-0.8, 0);
      canvas.turned(Style.SMALL_TEXT, base, text, turnDeg);
      return;
    }
    double at = turnDeg == 0 ? middle.xMm() : -middle.yMm();
    for (int tier = 0; tier < otherSideEndsMm.length; tier++) {
      if (at - widthMm / 2 > otherSideEndsMm[tier]) {
        otherSideEndsMm[tier] = at + widthMm / 2 + 0.8;
        double awayMm = 2.4 + tier * TIER_MM;
        Point base = turnDeg == 0 ? middle.plus(0, awayMm) : middle.plus(awayMm, 0);
        canvas.turned(Style.SMALL_TEXT, base, text, turnDeg);
        return;
      }
    }
  }
}
