package clampwise.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** A table as aligned columns; long cells are wrapped where the page is narrow. */
final class TextTable {

  private static final int BETWEEN = 2;

  /** Narrowest column, whatever the terminal says. */
  private static final int NARROWEST = 6;

  private final List<List<String>> rows = new ArrayList<>();
  private final Set<Integer> right;

  TextTable() {
    this(Set.of());
  }

  /**
   * A table with columns of numbers.
   *
   * @param right columns that are set to the right, from 0
   */
  TextTable(Set<Integer> right) {
    this.right = right;
  }

  void add(List<String> cells) {
    rows.add(List.copyOf(cells));
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The lines of the table; the first row is its heading. */
  List<String> lines(int width) {
    int[] widths = fitted(width);
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      addRow(row, widths, lines);
    }
    return lines;
  }

  private int[] fitted(int width) {
    int count = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] widths = new int[count];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths[i] = Math.max(widths[i], Columns.of(row.get(i)));
      }
    }
    int room = width - BETWEEN * (count - 1);
    while (Arrays.stream(widths).sum() > room && narrowWidest(widths)) {}
    Arrays.setAll(widths, i -> used(i, widths[i]));
    return widths;
  }

  /** What the cells of a column take of its width once they are wrapped. */
  private int used(int column, int width) {
    return rows.stream()
        .filter(row -> column < row.size())
        .flatMap(row -> Wrap.lines(row.get(column), width).stream())
        .mapToInt(Columns::of)
        .max()
        .orElse(width);
  }

  private static boolean narrowWidest(int[] widths) {
    int widest = 0;
    for (int i = 1; i < widths.length; i++) {
      widest = widths[i] > widths[widest] ? i : widest;
    }
    widths[widest]--;
    return widths[widest] > NARROWEST;
  }

  private void addRow(List<String> row, int[] widths, List<String> lines) {
    List<List<String>> cells = new ArrayList<>();
    int height = 0;
    for (int i = 0; i < row.size(); i++) {
      cells.add(Wrap.lines(row.get(i), widths[i]));
      height = Math.max(height, cells.get(i).size());
    }
    for (int line = 0; line < height; line++) {
      lines.add(line(cells, line, widths));
    }
  }

  private String line(List<List<String>> cells, int line, int[] widths) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
      String room = " ".repeat(Math.max(0, widths[i] - Columns.of(cell)));
      text.append(right.contains(i) ? room + cell : cell + room).append(" ".repeat(BETWEEN));
    }
    return text.toString().stripTrailing();
  }
}
