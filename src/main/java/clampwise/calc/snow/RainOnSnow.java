package clampwise.calc.snow;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Unit;

/** Rain that falls on snow. */
public final class RainOnSnow {

  private RainOnSnow() {}

  /**
   * Rain-on-snow surcharge of the balanced load, where the slope in degrees is below W / 50 ft: 5
   * psf for a ground snow above 0 and up to 20 psf (ASCE 7-16, 7.10; second-hand), 8 psf for a
   * ground snow above 0 and up to the largest minimum load (ASCE 7-22, 7.10; read).
   *
   * @param basis ground snow, risk category and edition
   * @param slopeRad slope of the roof [rad]
   * @param eaveToRidgeM plan distance W from eave to ridge [m]
   * @param work takes the lines
   * @return surcharge [Pa], zero where there is none
   */
  public static double pa(SnowBasis basis, double slopeRad, double eaveToRidgeM, Work work) {
    Table.Row row = basis.tables().row("rain");
    double mostPa = row.find("ground-most").orElseGet(() -> MinimumSnow.row(basis).number("most"));
    double steepestRad = steepestRad(basis, eaveToRidgeM, work);
    boolean hasGround = basis.groundPa() > 0 && basis.groundPa() <= mostPa;
    boolean isDue = hasGround && slopeRad < steepestRad;
    double pa = isDue ? row.number("surcharge") : 0;
    String note =
        isDue
            ? "the slope is below the limit and the ground snow within it"
            : hasGround ? "the slope is not below the limit" : "the ground snow is outside";
    return work.write(
        Line.given(
            Term.pressure("p_r", "rain-on-snow surcharge", pa),
            basis.tables().source("rain"),
            note));
  }

  private static double steepestRad(SnowBasis basis, double eaveToRidgeM, Work work) {
    double perDegreeM = basis.tables().row("rain").number("run-per-degree");
    Formulas formulas = Formulas.of(work);
    String feet = Formulas.number(Unit.FOOT.fromSi(perDegreeM));
    Term run = Term.length("W", "plan distance from eave to ridge", eaveToRidgeM);
    return work.write(
        Term.angle(
            "theta_r", "slope below which rain counts", Math.toRadians(eaveToRidgeM / perDegreeM)),
        formulas.in(Unit.FOOT, "W") + "/" + feet,
        basis.tables().source("rain"),
        run);
  }
}
