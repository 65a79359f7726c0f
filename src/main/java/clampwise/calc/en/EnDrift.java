package clampwise.calc.en;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Optional;

/**
 * A drift of EN 1991-1-3, in place of the even load: falls straight from the wall to its end.
 *
 * @param wallPa load at the wall [Pa]
 * @param endPa load at its end and beyond [Pa]
 * @param lengthM plan length [m]
 */
public record EnDrift(double wallPa, double endPa, double lengthM) {

  /** Load at a plan distance from the wall [Pa]. */
  public double atPa(double fromWallM) {
    return wallPa + (endPa - wallPa) * Math.min(1, fromWallM / lengthM);
  }

  /**
   * A lower roof and the taller building that it adjoins.
   *
   * @param riseM height h of the step [m], above zero
   * @param upperM plan length b1 of the upper roof, away from the step [m]
   * @param lowerM plan length b2 of the lower roof, away from the step [m]
   * @param sloping the slope that sheds its snow onto the lower roof, if there is one
   */
  public record Step(double riseM, double upperM, double lowerM, Optional<Upper> sloping) {}

  /**
   * A slope above a lower roof.
   *
   * @param pitchRad its pitch [rad]
   * @param lengthM its plan length from ridge to eave [m]
   */
  public record Upper(double pitchRad, double lengthM) {}

  /**
   * Drift on a lower roof against a taller building (EN 1991-1-3, 5.3.6; from memory): μ2 = μs +
   * μw, μw = (b1 + b2) / 2 h, at most γ h / sk with γ = 2 kN/m³, from 0.8 to 4, over 2 h, from 5 to
   * 15 m. μs spreads half of the upper slope's load as a triangle where it is steeper than 15
   * degrees.
   *
   * @param tables tables of EN 1991-1-3
   * @param site ground snow and coefficients
   * @param step the roofs
   * @param work takes the lines
   * @return the drift, or why there is none
   */
  public static Outcome<EnDrift> atStep(EnTables tables, EnSnow.Site site, Step step, Work work) {
    if (step.riseM <= 0 || site.groundPa() <= 0) {
      return new Outcome.NotApplicable<>("without a step or without snow there is no drift");
    }
    DriftLines lines = new DriftLines(tables, "drift", site, work);
    double lengthM = lines.lengthM(step.riseM);
    double wind = lines.wind(step);
    double slid = step.sloping.map(upper -> slid(lines, upper, lengthM)).orElse(0.0);
    double shape =
        work.write(
            Term.number("mu_2", "shape coefficient at the wall", slid + wind),
            "mu_s+mu_w",
            tables.source("drift"),
            Term.number("mu_s", "part that slides down", slid),
            Term.number("mu_w", "part that wind brings", wind));
    return new Outcome.Result<>(lines.drift(shape, lengthM));
  }

  /**
   * Drift at a projection, an obstruction or a parapet of a nearly flat roof (EN 1991-1-3, 6.2;
   * from memory): μ2 = γ h / sk with γ = 2 kN/m³, from 0.8 to 2, over 2 h, from 5 to 15 m.
   *
   * @param tables tables of EN 1991-1-3
   * @param site ground snow and coefficients
   * @param riseM height h of the obstruction [m], above zero
   * @param work takes the lines
   * @return the drift, or why there is none
   */
  public static Outcome<EnDrift> atObstruction(
      EnTables tables, EnSnow.Site site, double riseM, Work work) {
    if (riseM <= 0 || site.groundPa() <= 0) {
      return new Outcome.NotApplicable<>("without height or without snow there is no drift");
    }
    DriftLines lines = new DriftLines(tables, "obstruction", site, work);
    double lengthM = lines.lengthM(riseM);
    return new Outcome.Result<>(lines.drift(lines.held(riseM), lengthM));
  }

  private static double slid(DriftLines lines, Upper upper, double lengthM) {
    Table.Row row = lines.tables().row("drift-sliding");
    if (upper.pitchRad <= row.number("steeper-than") + 1e-9) {
      return 0;
    }
    double shape = SnowShape.mu1(lines.tables(), upper.pitchRad, false, lines.work());
    double share = row.number("share");
    return lines
        .work()
        .write(
            Term.number(
                "mu_s", "part that slides down", 2 * share * shape * upper.lengthM / lengthM),
            "2*" + Formulas.number(share) + "*mu_1*b_s/l_s",
            lines.tables().source("drift-sliding"),
            Term.number("mu_1", "shape coefficient of the upper slope", shape),
            Term.length("b_s", "plan length of the upper slope", upper.lengthM),
            Term.length("l_s", "length of the drift", lengthM));
  }
}
