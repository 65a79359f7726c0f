package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.List;

/** Velocity pressure of the wind at a height. */
public final class VelocityPressure {

  private VelocityPressure() {}

  /**
   * Velocity pressure of ASCE 7, Eq. 26.10-1: 7-16 q = 0.00256 K_z K_zt K_d K_e V², 7-22 the same
   * without K_d, which stands in the pressure equations there [psf, mph]; 0.613 instead of 0.00256
   * in N/m² and m/s. The constant is that of the measure of the work (they differ by 0.05 percent).
   * Second-hand; 0.613 from memory.
   *
   * @param heightM height above ground, for roofs the height h [m]
   * @return velocity pressure [Pa] and the directionality factor still to apply
   */
  public static Outcome<Velocity> of(WindCode code, WindSite site, double heightM, Work work) {
    if (!(site.speedMS() > 0)) {
      return new NotApplicable<>("a wind speed is above 0");
    }
    return ExposureCoefficient.of(code, site.exposure(), heightM, work)
        .then(k -> new Result<>(velocity(code, site, k, work)));
  }

  private static Velocity velocity(WindCode code, WindSite site, double k, Work work) {
    Source topography = code.clause("26.8");
    Term kzt = Term.number("K_zt", "topographic factor", site.topographic());
    work.given(kzt, topography);
    Term ke = Term.number("K_e", "ground elevation factor", GroundElevation.of(code, site, work));
    Term kd = Directionality.write(code, work);
    Term speed = new Term("V", "basic wind speed", site.speedMS(), Dimension.SPEED);
    List<Term> inputs = new ArrayList<>(List.of(ExposureCoefficient.result(k), kzt, ke));
    boolean inside = code.edition().hasDirectionalityInVelocity();
    if (inside) {
      inputs.add(kd);
    }
    double factors = inputs.stream().mapToDouble(Term::si).reduce(1, (a, b) -> a * b);
    inputs.add(speed);
    return Directionality.leftFor(code, pressure(code, factors, inputs, work));
  }

  private static double pressure(WindCode code, double factors, List<Term> inputs, Work work) {
    boolean metric = work.measure() == Measure.METRIC;
    String key = "velocity-constant-" + (metric ? "metric" : "imperial");
    double constant = code.number(key, "constant");
    double speed = work.measure().value(inputs.get(inputs.size() - 1));
    double written = constant * factors * speed * speed;
    double pressurePa = work.measure().of(Dimension.PRESSURE).toSi(written);
    StringBuilder formula = new StringBuilder(QuantityPrint.trimmed(constant, 9));
    inputs.forEach(input -> formula.append(" * ").append(input.symbol()));
    return work.write(
        Term.pressure("q_h", "velocity pressure", pressurePa),
        formula.append("^2").toString(),
        code.cite(code.table(key)),
        inputs.toArray(Term[]::new));
  }
}
