package clampwise.job;

import clampwise.source.CsvTable;
import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The columns of a CSV table by name; {@code along [mm]} gives the numbers of a column their unit.
 */
final class CsvColumns {

  /** Where a column stands and the unit its name gives. */
  private record Column(int index, String unit) {}

  /**
   * The columns that a table may have.
   *
   * @param needed those it must have
   * @param others those it may have besides
   */
  record Wanted(List<String> needed, List<String> others) {

    List<String> all() {
      return Stream.concat(needed.stream(), others.stream()).toList();
    }
  }

  private final CsvTable table;
  private final Wanted wanted;
  private final Map<String, Column> columns = new HashMap<>();
  private final Set<String> misspelt = new HashSet<>();
  private final Problems problems;

  private CsvColumns(CsvTable table, Wanted wanted, Problems problems) {
    this.table = table;
    this.wanted = wanted;
    this.problems = problems;
  }

  /** The columns of a table; empty, after problems, if columns, rows and cells do not fit. */
  static Optional<CsvColumns> of(CsvTable table, Wanted wanted, Problems problems) {
    CsvColumns columns = new CsvColumns(table, wanted, problems);
    for (int i = 0; i < table.header().size(); i++) {
      columns.name(i, table.header().get(i));
    }
    boolean complete = columns.isComplete();
    return columns.isAsWideAsItsHeader() && complete ? Optional.of(columns) : Optional.empty();
  }

  private boolean isComplete() {
    Span header = table.header().get(0).at();
    List<String> missing =
        wanted.needed().stream().filter(name -> !columns.containsKey(name)).toList();
    missing.stream()
        .filter(name -> !misspelt.contains(name))
        .map(name -> "no column named \"" + name + "\"")
        .forEach(found -> problems.add(Problem.of(header, found, expected())));
    if (missing.isEmpty() && rows().isEmpty()) {
      problems.add(Problem.of(header, "column names without rows", "a row below them"));
    }
    return missing.isEmpty() && !rows().isEmpty();
  }

  /** Told once: a decimal comma makes a cell too many in every row. */
  private boolean isAsWideAsItsHeader() {
    List<Node.Scalar> beyond =
        rows().stream().filter(this::isTooLong).map(row -> row.get(table.header().size())).toList();
    if (!beyond.isEmpty()) {
      String rows = beyond.size() == 1 ? "" : ", in " + beyond.size() + " rows";
      problems.add(
          Problem.of(
              beyond.get(0).at(),
              "a cell without a column" + rows,
              "as many cells as the first row has columns, and a point for decimals"));
    }
    return beyond.isEmpty();
  }

  List<List<Node.Scalar>> rows() {
    return table.rows();
  }

  /** Whether a row has a cell beyond the last column, so that it is unclear which is which. */
  private boolean isTooLong(List<Node.Scalar> row) {
    return row.stream().skip(table.header().size()).anyMatch(cell -> !cell.text().isEmpty());
  }

  /** The stretch of the whole table. */
  Span at() {
    Span header = table.header().get(0).at();
    List<Node.Scalar> last = rows().isEmpty() ? table.header() : rows().get(rows().size() - 1);
    return new Span(header.file(), Position.START, last.get(last.size() - 1).at().end());
  }

  /** The cell of a needed column, with the unit of the column; an empty one is a problem. */
  Optional<Node.Scalar> cell(List<Node.Scalar> row, String name) {
    Optional<Node.Scalar> cell = written(row, name);
    if (cell.isEmpty()) {
      problems.add(
          Problem.of(row.get(0).at(), "a row without \"" + name + "\"", "a value in every row"));
    }
    return cell;
  }

  /** The cell of a column that may be missing or empty. */
  Optional<Node.Scalar> written(List<Node.Scalar> row, String name) {
    Column column = columns.get(name);
    if (column == null || column.index() >= row.size()) {
      return Optional.empty();
    }
    Node.Scalar cell = row.get(column.index());
    return cell.text().isEmpty() ? Optional.empty() : Optional.of(withUnit(cell, column.unit()));
  }

  private static Node.Scalar withUnit(Node.Scalar cell, String unit) {
    boolean bare =
        !unit.isEmpty() && Character.isDigit(cell.text().charAt(cell.text().length() - 1));
    return bare ? new Node.Scalar(cell.text() + " " + unit, cell.quoted(), cell.at()) : cell;
  }

  private void name(int index, Node.Scalar header) {
    String text = header.text().toLowerCase(Locale.ROOT);
    int bracket = text.indexOf('[');
    String name = bracket < 0 ? text : text.substring(0, bracket).strip();
    String unit = bracket < 0 ? "" : header.text().substring(bracket + 1).replace("]", "").strip();
    if (!wanted.all().contains(name)) {
      Optional<String> nearest = Nearest.to(name, wanted.all());
      nearest.ifPresent(misspelt::add);
      String found = "the unknown column " + Reading.quoted(header.text());
      problems.add(new Problem(header.at(), found, expected(), nearest));
    } else if (columns.putIfAbsent(name, new Column(index, unit)) != null) {
      problems.add(Problem.of(header.at(), "the column \"" + name + "\" twice", expected()));
    }
  }

  private String expected() {
    String others = String.join(", ", wanted.others());
    return "the columns "
        + String.join(", ", wanted.needed())
        + (others.isEmpty() ? "" : " and, if wanted, " + others);
  }
}
