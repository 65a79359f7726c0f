package clampwise.facts.durability;

import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.job.Choice;
import clampwise.job.SurfaceMetal;
import clampwise.units.Units;
import java.util.Optional;

/** What the tables say of metals that touch. */
record CoupleTables(Table indices, Table exposures, Table air, Table pairs) {

  static CoupleTables of(Weathering weathering) {
    return new CoupleTables(
        weathering.metals("anodic-index"),
        weathering.metals("couple-exposures"),
        weathering.metals("couple-air"),
        weathering.metals("couples"));
  }

  double indexV(SurfaceMetal metal) {
    return indices.row("metal", Choice.word(metal)).orElseThrow().number("index");
  }

  /** The difference that the air allows; in the open it counts as harsh where it is not known. */
  Limit most(Optional<Air> known) {
    String exposure = known.map(this::exposure).orElse("harsh");
    Table.Row row = exposures.row("exposure", exposure).orElseThrow();
    return new Limit(
        "couple-" + exposure,
        row.number("most"),
        Units.VOLT,
        exposures.source().document(),
        "",
        exposures.source().clause(),
        exposures.source().obtained(),
        exposures.source().validity() + "; " + exposure + " exposure");
  }

  private String exposure(Air known) {
    return air.row("class", known.word()).orElseThrow().word("exposure");
  }

  /** Whether accepted couples need a pad in this air. */
  boolean needsPad(Air known) {
    return air.row("class", known.word()).orElseThrow().word("pad").equals("yes");
  }

  boolean isNever(SurfaceMetal noble, SurfaceMetal active) {
    return pair(noble, active).filter(row -> row.word("verdict").equals("never")).isPresent();
  }

  boolean isUsual(SurfaceMetal noble, SurfaceMetal active) {
    return pair(noble, active).filter(row -> row.word("verdict").equals("usual")).isPresent();
  }

  /** Whether what runs off one metal harms another. */
  boolean isHarmedByWater(SurfaceMetal above, SurfaceMetal below) {
    return pair(above, below).filter(row -> row.word("water").equals("yes")).isPresent();
  }

  private Optional<Table.Row> pair(SurfaceMetal noble, SurfaceMetal active) {
    for (Table.Row row : pairs.rows()) {
      if (row.word("noble").equals(Choice.word(noble))
          && row.word("active").equals(Choice.word(active))) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }
}
