package clampwise.calc.statics;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * A screw that is pulled out of sheet.
 *
 * @param thicknessM base metal thickness of the sheet that holds the thread [m]
 * @param diameterM outer diameter of the thread [m]
 * @param tensilePa tensile strength of the sheet [Pa]
 */
public record PullOut(double thicknessM, double diameterM, double tensilePa) {

  /**
   * Allowable pull-out of one screw, c t d Fu / Ω.
   *
   * <p>AISI S100, pull-out of screws (J4.4.1, E4.4.1 in older editions), coefficient and safety
   * factor as in the shared data, from memory. Holds for steel sheet; edge distances, shear and
   * pull-over are not looked at.
   *
   * @param coefficient c
   * @param safetyFactor Ω
   * @param source where both come from
   * @return allowable force [N], for service loads
   */
  public Strength<LimitState.Asd> show(
      double coefficient, double safetyFactor, Source source, Work work) {
    Term factor = Term.number("c", "coefficient", coefficient);
    Term omega = Term.number("Omega", "safety factor", safetyFactor);
    double nominalN = coefficient * thicknessM * diameterM * tensilePa;
    Term nominal = Term.force("P_not", "nominal pull-out of one screw", nominalN);
    work.write(
        nominal,
        "c*t*d*F_u",
        source,
        factor,
        Term.length("t", "base metal thickness of the sheet", thicknessM),
        Term.length("d", "outer diameter of the thread", diameterM),
        Term.pressure("F_u", "tensile strength of the sheet", tensilePa));
    Term allowable = Term.force("R", "allowable pull-out of one screw", nominalN / omega.si());
    return new Strength<>(work.write(allowable, "P_not/Omega", source, nominal, omega));
  }
}
