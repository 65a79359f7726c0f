package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.ZoneWidth;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Widths;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/** Widths of the wind zones of a roof as shown work, see {@link ZoneWidth}. */
public final class ZoneDimension {

  private static final String A = "dimension a of the zone figures";

  private ZoneDimension() {}

  /**
   * Zone widths of ASCE 7, figures 30.3-2A to 30.3-5B, as {@link ZoneWidth#of} gives them, with the
   * dimension a where the least plan size is known. Second-hand.
   *
   * @param roof the building [m, rad]
   * @return widths in plan [m], or why the figures do not apply
   */
  public static Outcome<Widths> of(WindCode code, Roof roof, Work work) {
    return ZoneWidth.of(roof)
        .then(
            widths -> {
              if (roof.leastPlanM() > 0) {
                writeA(code.clause("30.2, dimension a"), roof, work);
              }
              return write(code, roof, widths, work);
            });
  }

  private static Outcome<Widths> write(WindCode code, Roof roof, Widths widths, Work work) {
    if (!widths.figure().equals("30.3-2A")) {
      return Double.isNaN(widths.edgeM())
          ? new NotApplicable<>("the plan size of the building is not given")
          : new Result<>(widths);
    }
    Source source = code.clause("Figure 30.3-2A");
    Term h = Term.length("h", "height h", roof.heightM());
    work.write(Term.length("w_2", "width of zone 2", widths.edgeM()), "0.6 * h", source, h);
    work.write(
        Term.length("w_3", "width of the corner's legs", widths.cornerM()), "0.2 * h", source, h);
    return new Result<>(widths);
  }

  private static void writeA(Source source, Roof roof, Work work) {
    String rule = "max(min(0.1 * B, 0.4 * h), max(0.04 * B, a_min))";
    boolean wide = ZoneWidth.isLowAndWide(roof);
    work.write(
        new Line(
            Term.length("a", A, ZoneWidth.aM(roof)),
            wide ? "min(" + rule + ", 0.8 * h)" : rule,
            List.of(
                Term.length("B", "least plan size", roof.leastPlanM()),
                Term.length("h", "height h", roof.heightM()),
                Term.length("a_min", "least width", ZoneWidth.LEAST_A_M)),
            source,
            wide ? "low and wider than 300 ft: at most 0.8 h" : ""));
  }
}
