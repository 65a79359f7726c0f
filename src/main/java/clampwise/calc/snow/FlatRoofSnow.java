package clampwise.calc.snow;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Snow on a flat roof, its density and the least load of low slopes. */
public final class FlatRoofSnow {

  private FlatRoofSnow() {}

  /**
   * Flat roof snow load pf = 0.7 Ce Ct Is pg (ASCE 7-16, Eq. 7.3-1) or 0.7 Ce Ct pg (ASCE 7-22, Eq.
   * 7.3-1); read on published calculation sheets.
   *
   * @param basis ground snow and edition
   * @param exposureFactor Ce [-]
   * @param thermalFactor Ct [-]
   * @param work takes the lines
   * @return pf, on the horizontal projection [Pa]
   */
  public static double pa(SnowBasis basis, double exposureFactor, double thermalFactor, Work work) {
    double factor = basis.tables().row("flat-roof").number("factor");
    double pa = factor * exposureFactor * thermalFactor * basis.importance() * basis.groundPa();
    return work.write(
        Term.pressure("p_f", "snow load of a flat roof", pa),
        Formulas.number(factor) + "*C_e*C_t*" + basis.groundFormula(),
        basis.tables().source("flat-roof"),
        basis.groundAnd(
            Term.number("C_e", "exposure factor", exposureFactor),
            Term.number("C_t", "thermal factor", thermalFactor)));
  }
}
