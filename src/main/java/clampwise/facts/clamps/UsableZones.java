package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Field.DesignLoad;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The rows of a module's clamp-zone table that count for its clamped side and the design load.
 *
 * @param rows the rows, none of them if the module may be clamped nowhere
 */
record UsableZones(List<ClampZone> rows) {

  /** Rows of one side that carry a design load, if one is given. */
  static UsableZones of(ModuleType type, Side side, Optional<DesignLoad> load, double testFactor) {
    double factor = RatedLoads.factor(type, testFactor).orElse(testFactor);
    return new UsableZones(
        ofSide(type, side).stream()
            .filter(row -> load.isEmpty() || RatedLoads.carries(row, load.get(), factor))
            .toList());
  }

  /** All rows of one side. */
  static List<ClampZone> ofSide(ModuleType type, Side side) {
    return type.clampZones().stream().filter(row -> row.side().value() == side).toList();
  }

  /** All rows of the clamped side. */
  static List<ClampZone> ofSide(PlacedModule module) {
    return ofSide(module.type(), module.clampedSide());
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The row that holds a clamp at this distance from the nearer corner, or else the nearest. */
  ClampZone nearest(double fromCornerM) {
    return rows.stream()
        .min(Comparator.comparingDouble(row -> missM(row, fromCornerM)))
        .orElseThrow();
  }

  /** How far a clamp sits outside the nearest zone; 0 at its ends, negative inside [m]. */
  double missM(double fromCornerM) {
    return missM(nearest(fromCornerM), fromCornerM);
  }

  private static double missM(ClampZone row, double fromCornerM) {
    double belowM = row.zone().min().m() - fromCornerM;
    double aboveM = fromCornerM - row.zone().max().m();
    return Snap.m(Math.max(belowM, aboveM));
  }
}
