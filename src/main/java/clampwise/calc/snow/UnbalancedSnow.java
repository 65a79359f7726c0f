package clampwise.calc.snow;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * Snow that wind carries over the ridge of a hip or gable roof.
 *
 * @param windwardPa load of the windward slope [Pa]
 * @param nearRidgePa load of the leeward slope next to the ridge [Pa]
 * @param nearRidgeM plan distance from the ridge to which it reaches [m]
 * @param beyondPa load of the leeward slope beyond [Pa]
 */
public record UnbalancedSnow(
    double windwardPa, double nearRidgePa, double nearRidgeM, double beyondPa) {

  /**
   * A roof with a ridge.
   *
   * @param slopeRad slope [rad]
   * @param eaveToRidgeM plan distance W from eave to ridge [m]
   * @param simpleRafters whether simple members run from eave to ridge
   * @param balancedPa balanced load ps [Pa]
   * @param densityNm3 density of the snow [N/m³]
   */
  public record Ridge(
      double slopeRad,
      double eaveToRidgeM,
      boolean simpleRafters,
      double balancedPa,
      double densityNm3) {}

  /**
   * Unbalanced snow of hip and gable roofs (ASCE 7-16 and 7-22, 7.6.1; second-hand). Slopes from
   * 2.38 to 30.2 degrees. Up to W = 20 ft with simple rafters: leeward Is pg, windward none. Else
   * windward 0.3 ps; leeward ps + hd γ / √S over 8 hd √S / 3 from the ridge, ps beyond; hd with lu
   * = W.
   *
   * @param basis ground snow, importance, winter wind and edition
   * @param ridge the roof
   * @param work takes the lines
   * @return the loads on the horizontal projection [Pa], or why there are none
   */
  public static Outcome<UnbalancedSnow> of(SnowBasis basis, Ridge ridge, Work work) {
    Table.Row row = basis.tables().row("unbalanced");
    if (!hasUnbalanced(row, ridge.slopeRad)) {
      return new Outcome.NotApplicable<>("unbalanced snow is for slopes from 2.38 to 30.2 degrees");
    }
    if (ridge.simpleRafters && ridge.eaveToRidgeM <= row.number("narrow") + 1e-9) {
      return new Outcome.Result<>(narrow(basis, ridge, work));
    }
    if (basis.missing().isPresent()) {
      return new Outcome.NotApplicable<>(basis.missing().get().reason());
    }
    return new Outcome.Result<>(new Drifted(basis, ridge, row, work).loads());
  }

  /** Whether a slope drifts over its ridge at all. */
  static boolean hasUnbalanced(Table.Row row, double slopeRad) {
    return slopeRad >= row.number("slope-least") - 1e-9
        && slopeRad <= row.number("slope-most") + 1e-9;
  }

  private static UnbalancedSnow narrow(SnowBasis basis, Ridge ridge, Work work) {
    double leewardPa =
        work.write(
            Term.pressure("p_lee", "leeward slope", basis.importance() * basis.groundPa()),
            basis.groundFormula(),
            basis.tables().source("unbalanced"),
            basis.groundAnd());
    return new UnbalancedSnow(0, leewardPa, ridge.eaveToRidgeM, leewardPa);
  }

  private record Drifted(SnowBasis basis, Ridge ridge, Table.Row row, Work work) {

    UnbalancedSnow loads() {
      double windwardPa = windwardPa();
      double heightM =
          DriftHeight.m(basis, ridge.eaveToRidgeM, ridge.densityNm3, "h_d", work)
              .result()
              .orElseThrow();
      Term height = Term.length("h_d", "height of the drift", heightM);
      Term run = Term.number("S_r", "run for a rise of one", runPerRise());
      double extraPa = extraPa(height, run);
      double reachM = reachM(height, run);
      return new UnbalancedSnow(windwardPa, peakPa(extraPa), reachM, ridge.balancedPa);
    }

    private double windwardPa() {
      double share = row.number("windward");
      return write(
          Term.pressure("p_wind", "windward slope", share * ridge.balancedPa),
          Formulas.number(share) + "*p_s",
          balanced());
    }

    private double runPerRise() {
      return write(
          Term.number("S_r", "run for a rise of one", 1 / Math.tan(ridge.slopeRad)),
          "1/tan(theta)",
          Term.angle("theta", "slope", ridge.slopeRad));
    }

    private double extraPa(Term height, Term run) {
      double pa = height.si() * ridge.densityNm3 / Math.sqrt(run.si());
      return write(
          Term.pressure("p_sur", "surcharge near the ridge", pa),
          "h_d*gamma/sqrt(S_r)",
          height,
          Term.unitWeight("gamma", "density of the snow", ridge.densityNm3),
          run);
    }

    private double peakPa(double extraPa) {
      return write(
          Term.pressure("p_lee", "leeward slope near the ridge", ridge.balancedPa + extraPa),
          "p_s+p_sur",
          balanced(),
          Term.pressure("p_sur", "surcharge near the ridge", extraPa));
    }

    private double reachM(Term height, Term run) {
      double times = row.number("times");
      double over = row.number("over");
      double m = times * height.si() * Math.sqrt(run.si()) / over;
      return write(
          Term.length("x_d", "reach of the surcharge from the ridge", m),
          Formulas.filled("%s*h_d*sqrt(S_r)/%s", Formulas.number(times), Formulas.number(over)),
          height,
          run);
    }

    private Term balanced() {
      return Term.pressure("p_s", "balanced load", ridge.balancedPa);
    }

    private double write(Term result, String formula, Term... inputs) {
      return work.write(result, formula, basis.tables().source("unbalanced"), inputs);
    }
  }
}
