package clampwise.calc.wind;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;

/**
 * The wind standard as it is applied: the tables of an edition and what was chosen where it is
 * open.
 *
 * @param tables the tables of the standard in the edition in force
 * @param limits limits of the method for panels parallel to the roof
 */
public record WindCode(EditionTables tables, PanelLimits limits, WindChoices choices) {

  /** The edition that is applied. */
  public AsceEdition edition() {
    return tables.edition();
  }

  /** The same standard with other choices. */
  public WindCode with(WindChoices other) {
    return new WindCode(tables, limits, other);
  }

  Table table(String key) {
    return tables.table(key);
  }

  /** A table that each edition has its own of. */
  Table editionTable(String key) {
    return tables.table(key);
  }

  /** The only number of a table with one row. */
  double number(String key, String column) {
    return table(key).rows().get(0).number(column);
  }

  /** The source of a table, cited in the edition that is applied. */
  Source cite(Table table) {
    return cite(table.source());
  }

  Source cite(Source source) {
    return new Source(
        edition().document(),
        edition().label(),
        source.clause(),
        source.obtained(),
        source.validity());
  }

  /** A clause whose wording is known second-hand. */
  Source clause(String clause) {
    return new Source(edition().document(), edition().label(), clause, "second-hand", "");
  }
}
