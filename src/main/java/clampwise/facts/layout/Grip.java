package clampwise.facts.layout;

import clampwise.job.ModuleType.ClampZone;
import java.util.Optional;

/**
 * How an attachment grips one module.
 *
 * @param module the module it serves
 * @param edge which supported edge of that module
 * @param fromLeftM distance from the module's left corner [m]
 * @param fromCornerM distance from the nearer corner [m]
 * @param half the half of the edge it sits on
 * @param row the row of the module's clamp-zone table for this side that holds it, the one with the
 *     highest rating if several do
 */
public record Grip(
    PlacedModule module,
    Edge edge,
    double fromLeftM,
    double fromCornerM,
    Half half,
    Optional<ClampZone> row) {

  /** A supported edge of a module. */
  public enum Edge {
    LOWER,
    UPPER
  }

  /** A half of a module's edge. */
  public enum Half {
    LEFT,
    RIGHT
  }
}
