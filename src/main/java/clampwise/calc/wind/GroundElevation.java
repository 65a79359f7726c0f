package clampwise.calc.wind;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.QuantityPrint;

/** Ground elevation factor: thinner air on high ground. */
public final class GroundElevation {

  private static final String MEANING = "ground elevation factor";

  private GroundElevation() {}

  /**
   * Ground elevation factor K_e of ASCE 7-16 and 7-22, 26.9: as given, or exp(-0.0000362 z_e) with
   * the ground elevation in ft, exp(-0.000119 z_e) in m (from a library), or 1, which is always
   * permitted.
   *
   * @return K_e [-]
   */
  public static double of(WindCode code, WindSite site, Work work) {
    if (site.groundFactor().isPresent()) {
      Term given = Term.number("K_e", MEANING, site.groundFactor().get());
      return work.write(Line.given(given, code.clause("26.9"), "as given"));
    }
    return site.elevationM()
        .map(elevationM -> byElevation(code, elevationM, work))
        .orElseGet(() -> one(code, work));
  }

  private static double byElevation(WindCode code, double elevationM, Work work) {
    Term elevation = Term.length("z_e", "ground elevation above sea level", elevationM);
    boolean metric = work.measure() == Measure.METRIC;
    String key = "ground-elevation-" + (metric ? "metric" : "imperial");
    double perLength = code.number(key, "per-length");
    double factor = Math.exp(-perLength * work.measure().value(elevation));
    String formula = "exp(-" + QuantityPrint.trimmed(perLength, 9) + " * z_e)";
    Term result = Term.number("K_e", MEANING, factor);
    return work.write(result, formula, code.cite(code.table(key)), elevation);
  }

  private static double one(WindCode code, Work work) {
    Term one = Term.number("K_e", MEANING, 1);
    return work.write(
        Line.given(one, code.clause("26.9"), "no ground elevation given; 1 is always permitted"));
  }
}
