package clampwise.calc.snow;

import clampwise.calc.EditionTables;
import clampwise.calc.trail.Between;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Optional;

/** Thermal factor of a heated roof without ventilation, ASCE 7-22 table 7.3-3. */
final class HeatedRoof {

  private static final String MEANING = "thermal factor";

  private final EditionTables tables;
  private final Term ground;
  private final Work work;

  private HeatedRoof(EditionTables tables, Term ground, Work work) {
    this.tables = tables;
    this.ground = ground;
    this.work = work;
  }

  static double of(EditionTables tables, Optional<Double> resistance, double groundPa, Work work) {
    Table.Row best = tables.row("heated-roof-well-insulated");
    double limit = best.number("resistance-above");
    if (resistance.isPresent() && resistance.get() <= limit) {
      Term ground = Term.pressure("p_g", "ground snow load", groundPa);
      return new HeatedRoof(tables, ground, work).at(resistance.get());
    }
    String note = resistance.isPresent() ? "" : "thermal resistance not given: taken as above 50";
    return work.write(
        Line.given(
            Term.number("C_t", MEANING, best.number("factor")),
            tables.source("heated-roof-well-insulated"),
            note));
  }

  private double at(double resistance) {
    Between steps = Between.in(rows(), "resistance", "factor", resistance);
    if (steps.isOneRow()) {
      return along(steps.fromX(), "C_t", MEANING);
    }
    double low = along(steps.fromX(), "C_low", "factor of the row of less resistance");
    double high = along(steps.toX(), "C_high", "factor of the row of more resistance");
    return between(resistance, new Between(steps.fromX(), low, steps.toX(), high));
  }

  private double between(double resistance, Between rows) {
    return work.write(
        Term.number("C_t", MEANING, rows.value(resistance)),
        "C_low+(C_high-C_low)*(R-R_low)/(R_high-R_low)",
        source(),
        Term.number("R", "thermal resistance", resistance),
        Term.number("R_low", "resistance of the row below", rows.fromX()),
        Term.number("R_high", "resistance of the row above", rows.toX()),
        Term.number("C_low", "factor of the row of less resistance", rows.from()),
        Term.number("C_high", "factor of the row of more resistance", rows.to()));
  }

  private double along(double resistance, String symbol, String meaning) {
    List<Table.Row> row =
        rows().stream().filter(r -> r.number("resistance") == resistance).toList();
    return Between.in(row, "ground", "factor", ground.si())
        .write(work, ground, symbol, meaning, source());
  }

  private List<Table.Row> rows() {
    return tables.table("heated-roof").rows();
  }

  private Source source() {
    return tables.source("heated-roof");
  }
}
