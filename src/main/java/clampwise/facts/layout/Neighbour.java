package clampwise.facts.layout;

/**
 * A module beside another.
 *
 * @param module the neighbour
 * @param side where it lies, seen from the other module
 * @param gapM clear distance between the two [m]
 * @param sharedM length over which they face each other [m]
 */
public record Neighbour(PlacedModule module, Side side, double gapM, double sharedM) {

  /** How a module lies beside another, wherever it is. */
  public static Neighbour of(PlacedModule from, PlacedModule to, Side side) {
    return ModuleIndex.neighbour(from, to, side);
  }

  /** A side of a module, seen looking up the slope. */
  public enum Side {
    LEFT,
    RIGHT,
    BELOW,
    ABOVE
  }
}
