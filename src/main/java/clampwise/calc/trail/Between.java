package clampwise.calc.trail;

import java.util.List;

/**
 * A straight line between two rows of a table; the same row twice where the table has the value
 * itself.
 *
 * @param fromX place of the first row [SI]
 * @param from value of the first row
 * @param toX place of the second row [SI]
 * @param to value of the second row
 */
public record Between(double fromX, double from, double toX, double to) {

  /** A value that stands in the table. */
  public static Between at(double x, double value) {
    return new Between(x, value, x, value);
  }

  /**
   * The rows of a table round a place. Before the first and after the last row the value stays the
   * same.
   *
   * @param rows rows in rising order of the first column, at least one
   * @param xColumn column of the places
   * @param column column of the values
   * @param x the place [SI]
   */
  public static Between in(List<Table.Row> rows, String xColumn, String column, double x) {
    Table.Row below = rows.get(0);
    for (Table.Row row : rows) {
      if (row.number(xColumn) >= x) {
        Table.Row from = row.number(xColumn) == x ? row : below;
        return new Between(
            from.number(xColumn), from.number(column), row.number(xColumn), row.number(column));
      }
      below = row;
    }
    return at(below.number(xColumn), below.number(column));
  }

  /** The value at a place between the two rows. */
  public double value(double x) {
    return isOneRow() ? from : from + (to - from) * (x - fromX) / (toX - fromX);
  }

  /** Writes the line and gives its value: a number without a unit. */
  public double write(Work work, Term x, String symbol, String meaning, Source source) {
    Term result = Term.number(symbol, meaning, value(x.si()));
    if (isOneRow()) {
      return work.given(result, source);
    }
    String at = x.symbol();
    String formula = "%1$s_a+(%1$s_b-%1$s_a)*(%2$s-%2$s_a)/(%2$s_b-%2$s_a)".formatted(symbol, at);
    return work.write(
        result,
        formula,
        source,
        x,
        new Term(at + "_a", "row below", fromX, x.dimension()),
        new Term(at + "_b", "row above", toX, x.dimension()),
        Term.number(symbol + "_a", "value of the row below", from),
        Term.number(symbol + "_b", "value of the row above", to));
  }

  /** Whether the table has the value itself. */
  public boolean isOneRow() {
    return fromX == toX;
  }
}
