package clampwise.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes tables as CSV (RFC 4180), so that a spreadsheet neither breaks nor runs what it reads. */
public final class CsvText {

  /** What spreadsheets take for the start of a formula. */
  private static final String FORMULA = "=+-@\t\r";

  private CsvText() {}

  /** The rows of a table, the first being the names of its columns. */
  public static String of(List<List<String>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      for (List<String> row : rows) {
        printer.printRecord(row.stream().map(CsvText::tame).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** A text that starts like a formula is set behind an apostrophe. */
  private static String tame(String cell) {
    return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
  }
}
