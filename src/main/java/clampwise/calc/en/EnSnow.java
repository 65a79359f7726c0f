package clampwise.calc.en;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Snow on one slope of a roof after EN 1991-1-3, on the horizontal projection.
 *
 * @param cases its load cases
 */
public record EnSnow(List<Case> cases) {

  public EnSnow {
    cases = List.copyOf(cases);
  }

  /**
   * A load case.
   *
   * @param name name of the case
   * @param pa load of this slope [Pa]
   * @param otherPa load of the slope beyond the ridge, the same where there is none [Pa]
   */
  public record Case(String name, double pa, double otherPa) {}

  /**
   * Where the building stands.
   *
   * @param groundPa characteristic ground snow sk of the national annex [Pa]
   * @param exposure exposure coefficient Ce [-]
   * @param thermal thermal coefficient Ct, at most 1 [-]
   */
  public record Site(double groundPa, double exposure, double thermal) {}

  /**
   * The slopes of a roof.
   *
   * @param pitchRad pitch of this slope [rad]
   * @param otherRad pitch of the slope beyond the ridge [rad]; none for flat and monopitch roofs
   * @param held whether guards, a parapet or the array keep snow from sliding
   */
  public record Roof(double pitchRad, Optional<Double> otherRad, boolean held) {}

  /**
   * Snow load s = μ1 Ce Ct sk (EN 1991-1-3, Eq. 5.1 and 5.3.2, 5.3.3; read in a worked
   * calculation): even, and on duopitch roofs half of it on either slope. Slopes up to a right
   * angle.
   *
   * @param tables tables of EN 1991-1-3
   * @param site ground snow and coefficients
   * @param roof the slopes
   * @param work takes the lines
   * @return the load cases, or why they do not apply
   */
  public static Outcome<EnSnow> of(EnTables tables, Site site, Roof roof, Work work) {
    if (site.thermal > 1) {
      return new Outcome.NotApplicable<>("the thermal coefficient is at most 1");
    }
    double fullPa = pa(tables, site, roof.pitchRad, roof.held, work);
    if (roof.otherRad.isEmpty()) {
      return new Outcome.Result<>(new EnSnow(List.of(new Case("even", fullPa, fullPa))));
    }
    double otherPa = pa(tables, site, roof.otherRad.get(), roof.held, work);
    return new Outcome.Result<>(new EnSnow(cases(tables, fullPa, otherPa, work)));
  }

  /** The case with the largest load on this slope. */
  public Case governing() {
    return cases.stream().max(Comparator.comparingDouble(Case::pa)).orElseThrow();
  }

  private static List<Case> cases(EnTables tables, double fullPa, double otherPa, Work work) {
    List<Case> cases = new ArrayList<>();
    cases.add(new Case("even", fullPa, otherPa));
    cases.add(new Case("drifted off this slope", halfPa(tables, fullPa, work), otherPa));
    cases.add(new Case("drifted off the other slope", fullPa, halfPa(tables, otherPa, work)));
    return cases;
  }

  private static double pa(EnTables tables, Site site, double pitchRad, boolean held, Work work) {
    double shape = SnowShape.mu1(tables, pitchRad, held, work);
    return work.write(
        Term.pressure("s", "snow load", shape * site.exposure * site.thermal * site.groundPa),
        "mu_1*C_e*C_t*s_k",
        tables.table("shape").source("Eq. 5.1"),
        Term.number("mu_1", "shape coefficient", shape),
        Term.number("C_e", "exposure coefficient", site.exposure),
        Term.number("C_t", "thermal coefficient", site.thermal),
        Term.pressure("s_k", "characteristic ground snow", site.groundPa));
  }

  private static double halfPa(EnTables tables, double fullPa, Work work) {
    double share = tables.row("drifted").number("share");
    return work.write(
        Term.pressure("s_d", "snow load of the drifted slope", share * fullPa),
        Formulas.number(share) + "*s",
        tables.source("drifted"),
        Term.pressure("s", "snow load", fullPa));
  }
}
