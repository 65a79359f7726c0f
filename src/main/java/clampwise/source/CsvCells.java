package clampwise.source;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Finds the place of each cell of a CSV record, which the CSV library does not keep. */
final class CsvCells {

  private final String file;
  private final String text;
  private final char separator;
  private int line = 1;
  private int lineStart;
  private int index;

  CsvCells(String file, String text, char separator) {
    this.file = file;
    this.text = text;
    this.separator = separator;
  }

  /** The cells of the next record; records must come in order. */
  List<Node.Scalar> of(CSVRecord row) {
    moveTo((int) row.getCharacterPosition());
    List<Node.Scalar> cells = new ArrayList<>(row.size());
    for (String value : row) {
      cells.add(cell(value));
    }
    return cells;
  }

  /** The start of the last record that was read. */
  Span lastLine(String name) {
    Position at = new Position(line, 1);
    return new Span(name, at, at);
  }

  private Node.Scalar cell(String value) {
    int start = index;
    Position from = here();
    boolean quoted = start < text.length() && text.charAt(start) == '"';
    moveTo(endOfCell(start, quoted));
    Span at = new Span(file, from, here());
    if (index < text.length() && text.charAt(index) == separator) {
      index++;
    }
    return new Node.Scalar(value.strip(), quoted, at);
  }

  private int endOfCell(int start, boolean quoted) {
    int i = quoted ? closingQuote(start + 1) + 1 : start;
    while (i < text.length() && text.charAt(i) != separator && !isLineEnd(text.charAt(i))) {
      i++;
    }
    return Math.min(i, text.length());
  }

  private int closingQuote(int from) {
    int i = text.indexOf('"', from);
    while (i >= 0 && text.startsWith("\"", i + 1)) {
      i = text.indexOf('"', i + 2);
    }
    return i < 0 ? text.length() : i;
  }

  private void moveTo(int target) {
    for (; index < target; index++) {
      char c = text.charAt(index);
      if (c == '\n' || (c == '\r' && !text.startsWith("\n", index + 1))) {
        line++;
        lineStart = index + 1;
      }
    }
  }

  private Position here() {
    return new Position(line, text.codePointCount(lineStart, index) + 1);
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
