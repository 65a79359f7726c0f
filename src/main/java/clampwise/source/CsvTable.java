package clampwise.source;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table read from CSV; its cells know their line and column.
 *
 * @param header the cells of the first row
 * @param rows the rows below, without empty ones
 */
public record CsvTable(List<Node.Scalar> header, List<List<Node.Scalar>> rows) {

  /** Reads a table; empty, after a problem, if the text is no CSV or holds no row. */
  public static Optional<CsvTable> read(String file, String text, Problems problems) {
    char separator = separator(text);
    CSVFormat format =
        CSVFormat.Builder.create(CSVFormat.RFC4180)
            .setDelimiter(separator)
            .setIgnoreEmptyLines(false)
            .get();
    CsvCells cells = new CsvCells(file, text, separator);
    List<List<Node.Scalar>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord row : parser) {
        addRow(rows, cells.of(row));
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      problems.add(broken(cells.lastLine(file)));
      return Optional.empty();
    }
    if (rows.isEmpty()) {
      problems.add(Problem.of(Span.startOf(file), "an empty table", "a row of column names"));
      return Optional.empty();
    }
    return Optional.of(new CsvTable(rows.get(0), rows.subList(1, rows.size())));
  }

  private static void addRow(List<List<Node.Scalar>> rows, List<Node.Scalar> cells) {
    boolean blank = cells.stream().allMatch(cell -> cell.text().isEmpty());
    if (!blank && !cells.get(0).text().startsWith("#")) {
      rows.add(cells);
    }
  }

  private static Problem broken(Span at) {
    return Problem.of(
        at, "text after a closing quote, or a quote never closed, at or below here", "CSV");
  }

  /** Spreadsheets of many countries write semicolons; the first line tells. */
  private static char separator(String text) {
    String first = text.lines().findFirst().orElse("");
    if (first.indexOf(',') < 0) {
      return first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    }
    return ',';
  }
}
