package clampwise.calc.snow;

import clampwise.calc.EditionTables;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Optional;

/** How much less snow lies on a slope, ASCE 7 figure 7.4-1. */
public final class SlopeFactor {

  private static final double NOISE = 1e-9;

  private SlopeFactor() {}

  /**
   * What the snow would slide on.
   *
   * @param slippery whether the surface is slippery: bare or painted metal, glass
   * @param obstructed whether something holds the snow, or there is no space below the eave; an
   *     array counts as an obstruction unless the job says that snow slides off its glass
   * @param resistance thermal resistance R of the roof [ft²·h·°F/Btu], if known
   * @param ventilated whether the roof is ventilated
   */
  public record Surface(
      boolean slippery, boolean obstructed, Optional<Double> resistance, boolean ventilated) {}

  /**
   * Slope factor Cs (ASCE 7-16 and 7-22, figure 7.4-1; second-hand): 1 up to a knee, then straight
   * down to 0 at 70 degrees. The knee is at 30, 37.5 or 45 degrees by the thermal factor, at 5, 10
   * or 15 degrees for slippery unobstructed surfaces. In 7-16 a slippery surface of a warm roof
   * counts from R 30 unventilated or R 20 ventilated; where R is not known it does not count. No
   * such condition was found for 7-22.
   *
   * @param tables tables of the edition
   * @param slopeRad slope, 0 to a right angle [rad]
   * @param thermalFactor Ct [-]
   * @param surface what the snow would slide on
   * @param work takes the lines
   * @return Cs, 0 to 1 [-]
   */
  public static double of(
      EditionTables tables, double slopeRad, double thermalFactor, Surface surface, Work work) {
    Table.Row panel = panel(tables, thermalFactor);
    String held = held(tables, panel, surface);
    double kneeRad = panel.number(held.isEmpty() ? "slippery" : "other");
    double zeroRad = panel.number("zero");
    double factor = 1 - (slopeRad - kneeRad) / (zeroRad - kneeRad);
    String curve = held.isEmpty() ? "slippery" + doubt(tables) : "other surface: " + held;
    return work.write(
        new Line(
            Term.number("C_s", "slope factor", Math.max(0, Math.min(1, factor))),
            "max(0,min(1,1-(theta-theta_k)/(theta_0-theta_k)))",
            List.of(
                Term.angle("theta", "slope", slopeRad),
                Term.angle("theta_k", "slope up to which all snow stays", kneeRad),
                Term.angle("theta_0", "slope from which no snow stays", zeroRad)),
            tables.source("slope-panel"),
            "panel " + panel.word("panel") + ", " + curve));
  }

  private static String doubt(EditionTables tables) {
    boolean isGated = tables.find("slippery-resistance").isPresent();
    return isGated ? "" : "; no condition on thermal resistance was found in this edition";
  }

  private static Table.Row panel(EditionTables tables, double thermalFactor) {
    return tables.table("slope-panel").rows().stream()
        .filter(row -> row.find("most").map(m -> thermalFactor <= m + NOISE).orElse(true))
        .filter(row -> row.find("below").map(b -> thermalFactor < b - NOISE).orElse(true))
        .findFirst()
        .orElseThrow();
  }

  /** Why the slippery curve does not hold; empty if it does. */
  private static String held(EditionTables tables, Table.Row panel, Surface surface) {
    if (!surface.slippery) {
      return "not slippery";
    }
    if (surface.obstructed) {
      return "something holds the snow";
    }
    return panel.find("most").isPresent() ? tooLittleInsulation(tables, surface) : "";
  }

  private static String tooLittleInsulation(EditionTables tables, Surface surface) {
    Optional<Double> least =
        tables
            .find("slippery-resistance")
            .flatMap(table -> table.row("ventilated", surface.ventilated ? "yes" : "no"))
            .map(row -> row.number("least"));
    if (least.isEmpty() || surface.resistance.filter(r -> r >= least.get()).isPresent()) {
      return "";
    }
    return surface.resistance.isPresent()
        ? "too little thermal resistance"
        : "thermal resistance not given";
  }
}
