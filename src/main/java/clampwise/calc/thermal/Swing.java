package clampwise.calc.thermal;

import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.units.Dimension;

/**
 * From the coldest to the hottest that metal gets.
 *
 * @param coldC coldest metal temperature [°C]
 * @param hotC hottest metal temperature [°C]
 */
public record Swing(double coldC, double hotC) {

  private static final double FAHRENHEIT_PER_KELVIN = 1.8;

  /** Difference [K]. */
  public double differenceK() {
    return hotC - coldC;
  }

  Term cold() {
    return new Term("T_1", "coldest metal", coldC, Dimension.TEMPERATURE);
  }

  Term hot() {
    return new Term("T_2", "hottest metal", hotC, Dimension.TEMPERATURE);
  }

  /**
   * A coefficient of expansion in millionths per degree of the measure.
   *
   * @param millionthsPerK coefficient [10⁻⁶/K]
   */
  static Term coefficient(String symbol, String metal, double millionthsPerK, Measure measure) {
    boolean metric = measure == Measure.METRIC;
    String degree = metric ? "°C" : "°F";
    return Term.number(
        symbol,
        "expansion of " + metal + ", millionths per " + degree,
        metric ? millionthsPerK : millionthsPerK / FAHRENHEIT_PER_KELVIN);
  }
}
