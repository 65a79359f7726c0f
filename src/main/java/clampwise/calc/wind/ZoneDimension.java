package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.ZoneWidth;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Widths;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.QuantityPrint;
import java.util.List;
import java.util.Optional;

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
    return ZoneWidth.of(code.tables(), roof)
        .then(
            widths -> {
              if (roof.leastPlanM() > 0) {
                writeA(code, roof, work);
              }
              return write(code, roof, widths, work);
            });
  }

  private static Outcome<Widths> write(WindCode code, Roof roof, Widths widths, Work work) {
    Optional<Table.Row> low = ZoneWidth.lowSlope(code.tables(), widths.figure());
    if (low.isEmpty()) {
      return Double.isNaN(widths.edgeM())
          ? new NotApplicable<>("the plan size of the building is not given")
          : new Result<>(widths);
    }
    Source source = code.cite(code.table("low-slope-zones"));
    Term h = Term.length("h", "height h", roof.heightM());
    Term band = Term.length("w_2", "width of zone 2", widths.edgeM());
    Term leg = Term.length("w_3", "width of the corner's legs", widths.cornerM());
    work.write(band, number(low.get(), "band") + " * h", source, h);
    work.write(leg, number(low.get(), "leg") + " * h", source, h);
    return new Result<>(widths);
  }

  private static String number(Table.Row row, String column) {
    return QuantityPrint.trimmed(row.number(column), 4);
  }

  private static void writeA(WindCode code, Roof roof, Work work) {
    Table table = code.table("zone-dimension");
    Table.Row row = table.rows().get(0);
    String rule =
        "max(min(%s * B, %s * h), max(%s * B, a_min))"
            .formatted(
                number(row, "of-plan"), number(row, "of-height"), number(row, "least-of-plan"));
    boolean wide = ZoneWidth.isLowAndWide(code.tables(), roof);
    String most = number(row, "wide-of-height") + " * h";
    work.write(
        new Line(
            Term.length("a", A, ZoneWidth.aM(code.tables(), roof)),
            wide ? "min(" + rule + ", " + most + ")" : rule,
            List.of(
                Term.length("B", "least plan size", roof.leastPlanM()),
                Term.length("h", "height h", roof.heightM()),
                Term.length("a_min", "least width", row.number("least"))),
            code.cite(table),
            wide
                ? "low and wider than 300 ft: at most " + number(row, "wide-of-height") + " h"
                : ""));
  }
}
