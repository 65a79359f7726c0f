package clampwise.calc.thermal;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * Growth of a length of metal between two temperatures.
 *
 * @param lengthM length [m]
 * @param swing temperatures of the metal
 */
public record Expansion(double lengthM, Swing swing) {

  private static final Source SOURCE = Source.of("statics", "linear expansion", "worked out");

  /**
   * Growth α L ΔT.
   *
   * <p>Source: definition of the coefficient of linear expansion; it holds for the range of
   * temperatures of roofs.
   *
   * @param metal the metal
   * @return growth [m]
   */
  public double growthM(Metal metal) {
    return metal.perK() * lengthM * swing.differenceK();
  }

  /**
   * Difference of growth of two metals over the same length and temperatures, |α₁ - α₂| L ΔT.
   *
   * @return difference [m]
   */
  public double differenceM(Metal one, Metal other) {
    return Math.abs(one.perK() - other.perK()) * lengthM * swing.differenceK();
  }

  /** The growth, written into the work. */
  public Term show(Metal metal, Work work) {
    Term coefficient = given("alpha", metal, work);
    Term growth = Term.length("dL", "growth of the length", growthM(metal));
    work.write(
        growth, "alpha/10^6*L*(T_2-T_1)", SOURCE, coefficient, length(), swing.hot(), swing.cold());
    return growth;
  }

  /** The difference of two metals, written into the work. */
  public Term show(Metal one, Metal other, Work work) {
    Term first = given("alpha_1", one, work);
    Term second = given("alpha_2", other, work);
    Term difference = Term.length("dL", "difference of growth", differenceM(one, other));
    work.write(
        difference,
        "abs(alpha_1-alpha_2)/10^6*L*(T_2-T_1)",
        SOURCE,
        first,
        second,
        length(),
        swing.hot(),
        swing.cold());
    return difference;
  }

  private Term length() {
    return Term.length("L", "length", lengthM);
  }

  private static Term given(String symbol, Metal metal, Work work) {
    Term term = Swing.coefficient(symbol, metal.name(), metal.millionthsPerK(), work.measure());
    work.given(term, metal.source());
    return term;
  }
}
