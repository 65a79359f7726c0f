package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.QuantityPrint;

/** Effective wind area: the area over which a gust acts together on one element. */
public final class EffectiveArea {

  private EffectiveArea() {}

  /**
   * Effective wind area of ASCE 7, 26.2: span times width, the width at least a third of the span.
   * Second-hand.
   *
   * @param spanM span of the element [m]
   * @param widthM its tributary width [m]
   * @return area [m²], or why there is none
   */
  public static Outcome<Double> of(WindCode code, double spanM, double widthM, Work work) {
    if (!(spanM > 0 && widthM > 0)) {
      return new NotApplicable<>("span and width of an effective wind area are above 0");
    }
    double share = code.number("effective-wind-area", "share-of-span");
    String over = QuantityPrint.trimmed(1 / share, 6);
    double areaM2 = spanM * Math.max(widthM, spanM * share);
    return new Result<>(
        work.write(
            Term.area("A", "effective wind area", areaM2),
            "L * max(b, L / " + over + ")",
            code.cite(code.table("effective-wind-area")),
            Term.length("L", "span", spanM),
            Term.length("b", "tributary width", widthM)));
  }
}
