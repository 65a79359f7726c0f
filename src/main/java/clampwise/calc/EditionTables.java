package clampwise.calc;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import java.util.Map;
import java.util.Optional;

/**
 * The tables of one edition of ASCE 7. A table that differs between the editions carries the
 * edition at the end of its key, such as {@code drift-7-16}; any other holds for both.
 *
 * @param edition the edition
 * @param byKey all tables by key
 */
public record EditionTables(AsceEdition edition, Map<String, Table> byKey) {

  /** The table of this edition, if it has one. */
  public Optional<Table> find(String key) {
    Table own = byKey.get(key + "-" + edition.label());
    return Optional.ofNullable(own == null ? byKey.get(key) : own);
  }

  /** The table of this edition. */
  public Table table(String key) {
    return find(key).orElseThrow(() -> new IllegalArgumentException("no table named " + key));
  }

  /** The row of a table that has only one. */
  public Table.Row row(String key) {
    return table(key).rows().get(0);
  }

  /** Where a table comes from, named for this edition. */
  public Source source(String key) {
    return edition.source(table(key).source());
  }
}
