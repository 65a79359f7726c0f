package clampwise.calc.snow;

import clampwise.calc.EditionTables;
import clampwise.calc.Outcome;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Optional;

/** How far wind keeps a roof clear of snow, ASCE 7 table 7.3-1. */
public final class ExposureFactor {

  private ExposureFactor() {}

  /** Terrain round the building. */
  public enum Terrain {
    B("B"),
    C("C"),
    D("D"),
    ABOVE_TREE_LINE("above-tree-line"),
    ALASKA("alaska");

    private final String row;

    Terrain(String row) {
      this.row = row;
    }
  }

  /** How the roof itself stands in the wind. */
  public enum RoofExposure {
    FULLY("fully"),
    PARTIALLY("partially"),
    SHELTERED("sheltered");

    private final String column;

    RoofExposure(String column) {
      this.column = column;
    }
  }

  /**
   * Exposure factor Ce (ASCE 7-16 and 7-22, table 7.3-1; second-hand). No value stands for
   * sheltered roofs above the tree line and in treeless Alaska.
   *
   * @param tables tables of the edition
   * @param terrain surface roughness and terrain
   * @param roof exposure of the roof
   * @param work takes the lines
   * @return Ce [-]
   */
  public static Outcome<Double> of(
      EditionTables tables, Terrain terrain, RoofExposure roof, Work work) {
    Table.Row row = tables.table("exposure-factor").row("terrain", terrain.row).orElseThrow();
    Optional<Double> factor = row.find(roof.column);
    if (factor.isEmpty()) {
      return new Outcome.NotApplicable<>("table 7.3-1 has no sheltered roof in this terrain");
    }
    Term result = Term.number("C_e", "exposure factor", factor.get());
    return new Outcome.Result<>(work.given(result, tables.source("exposure-factor")));
  }
}
