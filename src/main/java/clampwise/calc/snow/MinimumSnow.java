package clampwise.calc.snow;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** The least snow load of low slopes, a load case of its own. */
public final class MinimumSnow {

  private MinimumSnow() {}

  /**
   * Minimum snow load of monoslope, hip and gable roofs below 15 degrees: Is times the smaller of
   * pg and 20 psf (ASCE 7-16, 7.3.4; second-hand); the smaller of pg and 25, 30, 35 or 40 psf for
   * risk category I to IV (ASCE 7-22, 7.3.3; read).
   *
   * @param basis ground snow, risk category and edition
   * @param slopeRad slope of the roof [rad]
   * @param work takes the lines
   * @return pm, on the horizontal projection [Pa], or why there is none
   */
  public static Outcome<Double> pa(SnowBasis basis, double slopeRad, Work work) {
    Table.Row row = row(basis);
    if (slopeRad >= row.number("slope-below")) {
      return new Outcome.NotApplicable<>("the minimum snow load is for slopes below 15 degrees");
    }
    double mostPa = row.number("most");
    double pa = basis.importance() * Math.min(basis.groundPa(), mostPa);
    Term most = Term.pressure("p_most", "largest minimum load", mostPa);
    String formula = (basis.hasImportance() ? "I_s*" : "") + "min(p_g,p_most)";
    return new Outcome.Result<>(
        work.write(
            Term.pressure("p_m", "minimum snow load", pa),
            formula,
            basis.tables().source("minimum"),
            basis.groundAnd(most)));
  }

  /** The row of the risk category, or the only one. */
  static Table.Row row(SnowBasis basis) {
    Table table = basis.tables().table("minimum");
    return table.row("risk", basis.risk().name()).orElseGet(() -> table.rows().get(0));
  }
}
