package clampwise.calc.en;

import clampwise.calc.trail.Between;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Units;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** External pressure coefficients of a roof zone by pitch, or by parapet, and by loaded area. */
final class Coefficient {

  private static final double LEAST_M2 = 1;
  private static final double MOST_M2 = 10;

  private final Source source;
  private final Predicate<Table.Row> disputed;
  private final Work work;

  Coefficient(Source source, Predicate<Table.Row> disputed, Work work) {
    this.source = source;
    this.disputed = disputed;
    this.work = work;
  }

  /** Suction or pressure. */
  enum Side {
    SUCTION("suction", "suction"),
    PRESSURE("pressure", "pressure");

    private final String column;
    private final String word;

    Side(String column, String word) {
      this.column = column;
      this.word = word;
    }
  }

  /**
   * The coefficient of one side for an area, if the table has that side.
   *
   * @param rows rows of the zone in rising order of the column
   * @param place pitch or parapet, named as in the lines
   * @param column column of the places
   * @param side suction or pressure
   * @param areaM2 loaded area [m²]
   */
  Optional<Double> of(List<Table.Row> rows, Term place, String column, Side side, double areaM2) {
    List<Table.Row> round = round(rows, column, place.si());
    List<Table.Row> filled =
        round.stream().filter(row -> row.find(side.column + "-10").isPresent()).toList();
    if (filled.isEmpty()) {
      return Optional.empty();
    }
    double ten = at(filled, place, column, side, "10");
    double one = at(filled, place, column, side, "1");
    boolean isDisputed = side == Side.PRESSURE && filled.stream().anyMatch(disputed);
    String note = isDisputed ? "the sources disagree about a row of this table" : "";
    return Optional.of(byArea(one, ten, side, areaM2, note));
  }

  /** The row at the place, or the two round it. */
  private static List<Table.Row> round(List<Table.Row> rows, String column, double place) {
    Table.Row below = rows.get(0);
    for (Table.Row row : rows) {
      if (Math.abs(row.number(column) - place) < 1e-9) {
        return List.of(row);
      }
      if (row.number(column) > place) {
        return below.equals(row) ? List.of(row) : List.of(below, row);
      }
      below = row;
    }
    return List.of(below);
  }

  /**
   * A straight line between values of the same sign; a side that one row lacks keeps the other's.
   */
  private double at(List<Table.Row> rows, Term place, String column, Side side, String area) {
    String cell = side.column + "-" + area;
    String meaning = side.word + " coefficient for " + area + " m²";
    return Between.in(rows, column, cell, place.si())
        .write(work, place, "c_" + area, meaning, source);
  }

  private double byArea(double one, double ten, Side side, double areaM2, String note) {
    double counted = Math.max(LEAST_M2, Math.min(MOST_M2, areaM2));
    double value = one - (one - ten) * Math.log10(counted);
    String area = Formulas.of(work).in(Units.SQUARE_METRE, "A");
    return work.write(
        new Line(
            Term.number("c_pe", side.word + " coefficient", value),
            "c_1-(c_1-c_10)*log10(min(max(" + area + ",1),10))",
            List.of(
                Term.number("c_1", "coefficient for 1 m²", one),
                Term.number("c_10", "coefficient for 10 m²", ten),
                Term.area("A", "loaded area", areaM2)),
            areaRule(),
            note));
  }

  private Source areaRule() {
    return new Source(
        source.document(), source.edition(), "Fig. 7.2", source.obtained(), source.validity());
  }
}
