package clampwise.job;

import clampwise.source.CsvTable;
import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The columns of a CSV table by name; {@code along [mm]} gives the numbers of a column their unit.
 */
final class CsvColumns {

  /** Where a column stands and the unit its name gives. */
  private record Column(int index, String unit) {}

  private static final Set<String> KNOWN = Set.of("along", "clamp", "part", "seam", "up");

  private final CsvTable table;
  private final Map<String, Column> columns = new HashMap<>();
  private final Problems problems;

  private CsvColumns(CsvTable table, Problems problems) {
    this.table = table;
    this.problems = problems;
  }

  /** The columns of a table; empty, after problems, if a needed one is missing. */
  static Optional<CsvColumns> of(CsvTable table, Set<String> needed, Problems problems) {
    CsvColumns columns = new CsvColumns(table, problems);
    for (int i = 0; i < table.header().size(); i++) {
      columns.name(i, table.header().get(i));
    }
    List<String> missing =
        new TreeSet<>(needed).stream().filter(name -> !columns.columns.containsKey(name)).toList();
    for (String name : missing) {
      columns.problem(table.header().get(0), "no column named \"" + name + "\"", needed);
    }
    return missing.isEmpty() ? Optional.of(columns) : Optional.empty();
  }

  List<List<Node.Scalar>> rows() {
    return table.rows();
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
    if (!KNOWN.contains(name)) {
      problem(header, "the unknown column " + Reading.quoted(header.text()), KNOWN);
    } else if (columns.putIfAbsent(name, new Column(index, unit)) != null) {
      problem(header, "the column \"" + name + "\" twice", Set.of(name));
    }
  }

  private void problem(Node.Scalar at, String found, Set<String> known) {
    List<String> sorted = new ArrayList<>(new TreeSet<>(known));
    String expected = "the columns " + String.join(", ", sorted);
    problems.add(new Problem(at.at(), found, expected, Nearest.to(at.text(), sorted)));
  }
}
