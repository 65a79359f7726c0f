package clampwise.calc.snow;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Units;

/** Density of snow on roofs. */
public final class SnowDensity {

  private SnowDensity() {}

  /**
   * Snow density 0.13 pg + 14, at most 30 pcf, with pg in psf (ASCE 7-16 and 7-22, Eq. 7.7-1;
   * second-hand).
   *
   * @param basis ground snow and edition
   * @param work takes the lines
   * @return density [N/m³]
   */
  public static double newtonPerM3(SnowBasis basis, Work work) {
    Table.Row row = basis.tables().row("density");
    double perPressure = row.number("per-pressure");
    double base = row.number("base");
    double most = row.number("most");
    double pcf = Math.min(perPressure * Units.PSF.fromSi(basis.groundPa()) + base, most);
    Formulas formulas = Formulas.of(work);
    String formula =
        Formulas.filled(
            "min(%s*%s+%s,%s)",
            Formulas.number(perPressure),
            formulas.in(Units.PSF, "p_g"),
            Formulas.number(base),
            Formulas.number(most));
    return work.write(
        Term.unitWeight("gamma", "density of the snow", Units.PCF.toSi(pcf)),
        formulas.out(Units.PCF, formula),
        basis.tables().source("density"),
        basis.ground());
  }
}
