package clampwise.calc.wind;

import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Directionality factor of buildings. */
public final class Directionality {

  private static final String TABLE = "directionality";

  private Directionality() {}

  /**
   * A velocity pressure as the edition prints it, with the directionality factor that its pressure
   * equations still apply: none in 7-16, that of buildings in 7-22 (ASCE 7, table 26.6-1,
   * second-hand).
   *
   * @param pressurePa velocity pressure at height h [Pa]
   */
  public static Velocity leftFor(WindCode code, double pressurePa) {
    return new Velocity(
        pressurePa, code.edition().hasDirectionalityInVelocity() ? 1 : factor(code));
  }

  static Term write(WindCode code, Work work) {
    Term kd = Term.number("K_d", "directionality factor", factor(code));
    work.given(kd, code.cite(code.table(TABLE)));
    return kd;
  }

  private static double factor(WindCode code) {
    return code.number(TABLE, "factor");
  }
}
