package clampwise.plan;

/** A place on a sheet, from its upper left corner [mm]. */
public record Point(double xMm, double yMm) {

  Point plus(double alongMm, double downMm) {
    return new Point(xMm + alongMm, yMm + downMm);
  }

  Point between(Point other) {
    return new Point((xMm + other.xMm) / 2, (yMm + other.yMm) / 2);
  }

  double to(Point other) {
    return Math.hypot(other.xMm - xMm, other.yMm - yMm);
  }
}
