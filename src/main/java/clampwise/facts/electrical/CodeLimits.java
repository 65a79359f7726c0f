package clampwise.facts.electrical;

import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.job.Choice;
import clampwise.job.ElectricalCode;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Limits that stand in tables by code and edition. */
record CodeLimits(Table table, ElectricalCode code) {

  /** The rows of the code. */
  Stream<Table.Row> rows() {
    return table.rows().stream().filter(row -> row.word("code").equals(Choice.word(code)));
  }

  /** A limit of the first row of the code that holds for the case; none if the code sets none. */
  Optional<Limit> find(String column, Unit unit, Predicate<Table.Row> holds) {
    return rows()
        .filter(holds)
        .findFirst()
        .flatMap(row -> row.find(column).map(si -> limit(row, column, si, unit)));
  }

  /** The limit of a code that has one row. */
  Optional<Limit> find(String column, Unit unit) {
    return find(column, unit, row -> true);
  }

  private Limit limit(Table.Row row, String column, double si, Unit unit) {
    return new Limit(
        table.key() + "-" + column,
        si,
        unit,
        code.document(),
        edition(),
        row.words().getOrDefault("clause", table.source().clause()),
        obtained(row, column),
        table.source().validity());
  }

  /** As of the column, else of the row, else of the table. */
  private String obtained(Table.Row row, String column) {
    String ofRow = row.words().getOrDefault("obtained", table.source().obtained());
    return row.words().getOrDefault(column + "-obtained", ofRow);
  }

  private String edition() {
    return code.isNec() ? Choice.word(code).substring("nec-".length()) : "";
  }
}
