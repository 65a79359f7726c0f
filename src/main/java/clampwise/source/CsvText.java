package clampwise.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes tables as CSV (RFC 4180), so that a spreadsheet neither breaks nor runs what it reads. */
public final class CsvText {

  /** In front of a file it tells spreadsheets that the letters are UTF-8. */
  public static final char UTF_8_MARK = '\uFEFF';

  /** What spreadsheets take for the start of a formula, also in the wide letters of East Asia. */
  private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private final CSVPrinter printer;

  /** A table that is written as it comes. */
  public CsvText(Appendable out) throws IOException {
    printer = new CSVPrinter(out, CSVFormat.RFC4180);
  }

  /** The rows of a table, the first being the names of its columns. */
  public static String of(List<List<String>> rows) {
    StringBuilder out = new StringBuilder();
    try {
      CsvText text = new CsvText(out);
      for (List<String> row : rows) {
        text.row(row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** Writes a row. */
  public void row(List<String> cells) throws IOException {
    List<String> tame = new ArrayList<>();
    for (String cell : cells) {
      tame.add(tame(cell));
    }
    printer.printRecord(tame);
  }

  /** A text that starts like a formula is set behind an apostrophe; a number is none. */
  private static String tame(String cell) {
    boolean formula = !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0;
    return formula && !isNumber(cell) ? "'" + cell : cell;
  }

  /** Digits behind a minus, with a point among them or not. */
  private static boolean isNumber(String cell) {
    boolean digits = false;
    boolean point = false;
    for (int i = cell.startsWith("-") ? 1 : 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      boolean digit = c >= '0' && c <= '9';
      if (!digit && (c != '.' || point)) {
        return false;
      }
      digits |= digit;
      point |= c == '.';
    }
    return digits;
  }
}
