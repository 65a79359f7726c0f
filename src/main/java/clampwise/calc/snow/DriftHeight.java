package clampwise.calc.snow;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Unit;
import clampwise.units.Units;

/** Height of a snow drift from the length of roof that feeds it. */
public final class DriftHeight {

  private static final String MEANING = "height of the drift";

  private DriftHeight() {}

  /**
   * Drift height. ASCE 7-16, figure 7.6-1: hd = √Is (0.43 ∛lu ∜(pg + 10) − 1.5) in feet and psf, lu
   * at least 20 ft. ASCE 7-22, Eq. 7.6-1: hd = 1.5 √(pg^0.74 lu^0.70 W2^1.7 / γ) in feet, psf and
   * pcf, without a least fetch. Both second-hand.
   *
   * @param basis ground snow, importance, winter wind and edition
   * @param fetchM length of roof upwind lu [m]
   * @param densityNm3 density of the snow [N/m³]
   * @param symbol symbol of the height in the lines
   * @param work takes the lines
   * @return hd [m], or which input is missing
   */
  public static Outcome<Double> m(
      SnowBasis basis, double fetchM, double densityNm3, String symbol, Work work) {
    if (basis.missing().isPresent()) {
      return basis.missing().get();
    }
    return new Outcome.Result<>(
        basis.edition() == AsceEdition.ASCE_7_16
            ? byFetch(basis, fetchM, symbol, work)
            : byWinterWind(basis, fetchM, densityNm3, symbol, work));
  }

  private static double byFetch(SnowBasis basis, double fetchM, String symbol, Work work) {
    Table.Row row = basis.tables().row("drift");
    Formulas formulas = Formulas.of(work);
    double fetchFt = Unit.FOOT.fromSi(Math.max(fetchM, row.number("fetch-least")));
    double groundPsf = Units.PSF.fromSi(basis.groundPa());
    double raised = Math.cbrt(fetchFt) * Math.pow(groundPsf + row.number("add"), 0.25);
    double ft = row.number("factor") * raised - row.number("less");
    double m = Unit.FOOT.toSi(Math.sqrt(basis.importance()) * Math.max(0, ft));
    String formula =
        Formulas.filled(
            "sqrt(I_s)*max(0,%s*max(%s,%s)^(1/3)*(%s+%s)^(1/4)-%s)",
            Formulas.number(row.number("factor")),
            formulas.in(Unit.FOOT, "l_u"),
            Formulas.number(Unit.FOOT.fromSi(row.number("fetch-least"))),
            formulas.in(Units.PSF, "p_g"),
            Formulas.number(row.number("add")),
            Formulas.number(row.number("less")));
    return work.write(
        Term.length(symbol, MEANING, m),
        formulas.out(Unit.FOOT, formula),
        source(basis),
        fetch(fetchM),
        basis.ground(),
        basis.importanceTerm());
  }

  private static double byWinterWind(
      SnowBasis basis, double fetchM, double densityNm3, String symbol, Work work) {
    Table.Row row = basis.tables().row("drift");
    double wind = basis.winterWind().orElseThrow();
    double raised =
        Math.pow(Units.PSF.fromSi(basis.groundPa()), row.number("ground"))
            * Math.pow(Unit.FOOT.fromSi(fetchM), row.number("fetch"))
            * Math.pow(wind, row.number("wind"));
    double ft = row.number("factor") * Math.sqrt(raised / Units.PCF.fromSi(densityNm3));
    return work.write(
        Term.length(symbol, MEANING, Unit.FOOT.toSi(ft)),
        winterFormula(row, Formulas.of(work)),
        source(basis),
        fetch(fetchM),
        basis.ground(),
        Term.number("W_2", "winter wind parameter", wind),
        density(densityNm3));
  }

  private static String winterFormula(Table.Row row, Formulas formulas) {
    String formula =
        Formulas.filled(
            "%s*sqrt(%s^%s*%s^%s*W_2^%s/%s)",
            Formulas.number(row.number("factor")),
            formulas.in(Units.PSF, "p_g"),
            Formulas.number(row.number("ground")),
            formulas.in(Unit.FOOT, "l_u"),
            Formulas.number(row.number("fetch")),
            Formulas.number(row.number("wind")),
            formulas.in(Units.PCF, "gamma"));
    return formulas.out(Unit.FOOT, formula);
  }

  /**
   * Drift height at a step. In ASCE 7-16 a fetch below 20 ft limits it to √(Is pg lu / (4 γ))
   * (7.7.1; second-hand); else as {@link #m}.
   *
   * @param basis ground snow, importance, winter wind and edition
   * @param fetchM length of roof upwind lu [m]
   * @param densityNm3 density of the snow [N/m³]
   * @param symbol symbol of the height in the lines
   * @param work takes the lines
   * @return hd [m], or which input is missing
   */
  public static Outcome<Double> atStepM(
      SnowBasis basis, double fetchM, double densityNm3, String symbol, Work work) {
    boolean isShort =
        basis.tables().find("drift-short-fetch").isPresent()
            && fetchM < basis.tables().row("drift").number("fetch-least");
    if (!isShort) {
      return m(basis, fetchM, densityNm3, symbol, work);
    }
    Term usual = Term.length(symbol + "_0", MEANING, byFetch(basis, fetchM, symbol + "_0", work));
    double divisor = basis.tables().row("drift-short-fetch").number("divisor");
    double mostM =
        Math.sqrt(basis.importance() * basis.groundPa() * fetchM / (divisor * densityNm3));
    return new Outcome.Result<>(
        work.write(
            Term.length(symbol, "height of the drift, short fetch", Math.min(usual.si(), mostM)),
            Formulas.filled(
                "min(%s,sqrt(I_s*p_g*l_u/(%s*gamma)))", usual.symbol(), Formulas.number(divisor)),
            basis.tables().source("drift-short-fetch"),
            basis.groundAnd(usual, fetch(fetchM), density(densityNm3))));
  }

  private static Term density(double nPerM3) {
    return Term.unitWeight("gamma", "density of the snow", nPerM3);
  }

  private static Term fetch(double fetchM) {
    return Term.length("l_u", "length of roof upwind", fetchM);
  }

  private static Source source(SnowBasis basis) {
    return basis.tables().source("drift");
  }
}
