package clampwise.calc.en;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The tables of EN 1991-1-4 or EN 1991-1-3.
 *
 * @param byKey all tables by key
 * @param reading which reading of a disputed row holds
 */
public record EnTables(Map<String, Table> byKey, Reading reading) {

  private static final double SAME_PITCH_RAD = 1e-9;

  /** Readings of a row about which the sources disagree. */
  public enum Reading {
    /** The one that gives the larger load. */
    SEVERE,
    OTHER
  }

  /** The tables with the severe reading of disputed rows. */
  public static EnTables of(Map<String, Table> byKey) {
    return new EnTables(byKey, Reading.SEVERE);
  }

  Table table(String key) {
    return Optional.ofNullable(byKey.get(key))
        .orElseThrow(() -> new IllegalArgumentException("no table named " + key));
  }

  Table.Row row(String key) {
    return table(key).rows().get(0);
  }

  Source source(String key) {
    return table(key).source();
  }

  /** The rows of a zone, in the reading that holds. */
  List<Table.Row> zone(String key, String zone) {
    return table(key).rows().stream()
        .filter(row -> row.word("zone").equals(zone))
        .map(row -> read(key, row))
        .toList();
  }

  /** Whether the sources disagree about a row. */
  boolean isDisputed(String key, Table.Row row) {
    return other(key, row).isPresent();
  }

  private Table.Row read(String key, Table.Row row) {
    return reading == Reading.SEVERE ? row : other(key, row).orElse(row);
  }

  private Optional<Table.Row> other(String key, Table.Row row) {
    return Optional.ofNullable(byKey.get(key + "-other-reading")).stream()
        .flatMap(table -> table.rows().stream())
        .filter(each -> isSame(each, row))
        .findFirst();
  }

  private static boolean isSame(Table.Row one, Table.Row two) {
    return one.word("zone").equals(two.word("zone"))
        && Math.abs(one.number("pitch") - two.number("pitch")) < SAME_PITCH_RAD;
  }
}
