package clampwise.calc.trail;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A table of a code or handbook as it stands in the shared data.
 *
 * @param key its name
 * @param source where it comes from
 * @param rows its rows, in order
 */
public record Table(String key, Source source, List<Row> rows) {

  public Table {
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param words its text cells, by column
   * @param numbers its quantities [SI], by column; empty cells are left out
   */
  public record Row(Map<String, String> words, Map<String, Double> numbers) {

    /** The text of a column. */
    public String word(String column) {
      return required(words.get(column), column);
    }

    /** The quantity of a column [SI]. */
    public double number(String column) {
      return required(numbers.get(column), column);
    }

    /** The quantity of a column [SI], if the cell is filled. */
    public Optional<Double> find(String column) {
      return Optional.ofNullable(numbers.get(column));
    }

    private static <T> T required(@Nullable T cell, String column) {
      if (cell == null) {
        throw new IllegalStateException("a row of a table has no " + column);
      }
      return cell;
    }
  }

  /** The first row whose text column holds this word. */
  public Optional<Row> row(String column, String word) {
    return rows.stream().filter(row -> word.equals(row.words().get(column))).findFirst();
  }

  /** A row's source: the table's. */
  public Source source(String clause) {
    return new Source(
        source.document(), source.edition(), clause, source.obtained(), source.validity());
  }
}
