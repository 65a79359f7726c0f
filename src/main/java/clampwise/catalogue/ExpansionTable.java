package clampwise.catalogue;

import clampwise.calc.thermal.Metal;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;

/** Coefficients of expansion of the shared data; where sources differ, the severe one is taken. */
public record ExpansionTable(Table table) {

  /** Two metals. */
  public record Pair(Metal one, Metal other) {

    private double apart() {
      return Math.abs(one.millionthsPerK() - other.millionthsPerK());
    }
  }

  /** The table of the codes. */
  public static ExpansionTable of(CodeTables codes) {
    return new ExpansionTable(codes.file("thermal.yaml").get("expansion"));
  }

  /** A metal at the end of its range at which it grows most. */
  public Metal most(String metal) {
    return metal(metal, "most");
  }

  /** Two metals at the ends of their ranges that lie furthest apart. */
  public Pair furthest(String one, String other) {
    Pair over = new Pair(metal(one, "most"), metal(other, "least"));
    Pair under = new Pair(metal(one, "least"), metal(other, "most"));
    return over.apart() >= under.apart() ? over : under;
  }

  private Metal metal(String name, String end) {
    Table.Row row =
        table
            .row("metal", name)
            .orElseThrow(() -> new IllegalArgumentException("no metal " + name));
    Source source =
        Source.of(table.source().document(), table.source().clause(), row.word("obtained"));
    return new Metal(name, row.number(end), source);
  }
}
