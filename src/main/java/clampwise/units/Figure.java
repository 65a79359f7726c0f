package clampwise.units;

/**
 * A number as it was written, such as {@code 7 1/2}, {@code 1,722} or {@code 1/0}.
 *
 * @param whole the number before the fraction
 * @param over numerator, 0 if there is no fraction
 * @param under denominator, -1 if there is no fraction
 * @param commas what its commas can mean
 */
record Figure(double whole, double over, double under, Commas commas) {

  enum Commas {
    NONE,
    THOUSANDS,
    UNCLEAR
  }

  static Figure decimal(double value, Commas commas) {
    return new Figure(value, 0, -1, commas);
  }

  Figure plus(double numerator, double denominator) {
    return new Figure(whole, numerator, denominator, commas);
  }

  boolean isFraction() {
    return under >= 0;
  }

  /** The value; infinite for a fraction over zero. */
  double value() {
    return isFraction() ? whole + over / under : whole;
  }
}
