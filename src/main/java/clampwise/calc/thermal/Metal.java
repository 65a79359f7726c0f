package clampwise.calc.thermal;

import clampwise.calc.trail.Source;

/**
 * A metal with its coefficient of linear expansion.
 *
 * @param name name of the metal
 * @param millionthsPerK coefficient [10⁻⁶/K]
 * @param source where the coefficient comes from
 */
public record Metal(String name, double millionthsPerK, Source source) {

  /** Coefficient [1/K]. */
  public double perK() {
    return millionthsPerK * 1e-6;
  }
}
