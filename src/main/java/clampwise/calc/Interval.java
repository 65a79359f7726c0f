package clampwise.calc;

/**
 * A closed interval of lengths.
 *
 * @param fromM lower end [m]
 * @param toM upper end [m]
 */
public record Interval(double fromM, double toM) {

  public double lengthM() {
    return toM - fromM;
  }

  public double middleM() {
    return (fromM + toM) / 2;
  }

  public boolean contains(double m) {
    return fromM <= m && m <= toM;
  }

  boolean isEmpty() {
    return toM < fromM;
  }

  Interval and(Interval other) {
    return new Interval(Math.max(fromM, other.fromM), Math.min(toM, other.toM));
  }

  Interval shifted(double byM) {
    return new Interval(Snap.m(fromM + byM), Snap.m(toM + byM));
  }
}
