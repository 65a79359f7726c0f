package clampwise.calculation;

import clampwise.calc.thermal.Metal;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import java.util.Optional;

/** Coefficients of expansion of the shared data; where sources differ, the severe one. */
final class Metals {

  private final Table table;

  Metals(Table table) {
    this.table = table;
  }

  /** A metal and a coefficient that stands instead of the table's. */
  record Choice(String metal, Optional<Double> millionthsPerK) {}

  /** Two metals. */
  record Pair(Metal one, Metal other) {}

  String validity() {
    return table.source().validity();
  }

  Input input(String name) {
    String[] words = table.rows().stream().map(row -> row.word("metal")).toArray(String[]::new);
    return Input.word(name, "metal", words);
  }

  /** The metal that grows most within its range of sources. */
  Metal most(String metal, Optional<Double> instead) {
    return metal(new Choice(metal, instead), "most");
  }

  /** The ends of both ranges that lie furthest apart. */
  Pair furthest(Choice one, Choice other) {
    Pair over = new Pair(metal(one, "most"), metal(other, "least"));
    Pair under = new Pair(metal(one, "least"), metal(other, "most"));
    return apart(over) >= apart(under) ? over : under;
  }

  private static double apart(Pair pair) {
    return Math.abs(pair.one.millionthsPerK() - pair.other.millionthsPerK());
  }

  private Metal metal(Choice choice, String end) {
    Table.Row row =
        table
            .row("metal", choice.metal)
            .orElseThrow(() -> new IllegalArgumentException("no metal " + choice.metal));
    Source source =
        choice.millionthsPerK.isPresent()
            ? new Source("given", "", "", "given", "")
            : Source.of(table.source().document(), table.source().clause(), row.word("obtained"));
    return new Metal(choice.metal, choice.millionthsPerK.orElse(row.number(end)), source);
  }
}
