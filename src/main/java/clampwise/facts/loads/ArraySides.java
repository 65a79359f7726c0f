package clampwise.facts.loads;

import clampwise.calc.wind.PanelSide;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Neighbour;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Building.RoofShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds what lies beyond the sides of an array, for the modules near them. */
final class ArraySides {

  private static final double FREE_HEIGHTS = 2;

  /** Further than any reading of the standard looks for the next array [m]. */
  private static final double LOOK_M = 1.3;

  private static final double LOOK_HEIGHTS = 4.1;

  /** The widest strip of any reading, in module lengths. */
  private static final double STRIP_LENGTHS = 1.5;

  private final ModuleIndex index;
  private final RoofReach roof;
  private final double sameArrayM;
  private final double lookM;

  /** The arrays of a plane whose modules stand so high above it [m]. */
  ArraySides(PlaneLayout plane, double topHeightM, Optional<RoofShape> shape) {
    this.index = ModuleIndex.of(plane);
    this.roof = new RoofReach(plane, shape);
    this.sameArrayM = FREE_HEIGHTS * topHeightM;
    this.lookM = Math.max(LOOK_M, LOOK_HEIGHTS * topHeightM);
  }

  /** The sides of its array that a module is near enough to for raised uplift. */
  List<PanelSide> of(PlacedModule module) {
    double stripM = stripM(module);
    List<PanelSide> near = new ArrayList<>();
    for (Side side : Side.values()) {
      side(module, side, stripM).ifPresent(near::add);
    }
    return near;
  }

  private double stripM(PlacedModule module) {
    return Math.max(STRIP_LENGTHS * Math.max(module.alongM(), module.upM()), sameArrayM);
  }

  private Optional<PanelSide> side(PlacedModule module, Side side, double stripM) {
    PlacedModule edge = module;
    double insideM = 0;
    double nextPanelM = Double.POSITIVE_INFINITY;
    while (insideM < stripM) {
      Optional<Neighbour> next = next(edge, side);
      double gapM = next.map(Neighbour::gapM).orElse(Double.POSITIVE_INFINITY);
      nextPanelM = edge == module ? gapM : nextPanelM;
      if (gapM > sameArrayM) {
        return Optional.of(new PanelSide(roof.edgeM(edge, side), gapM, nextPanelM, insideM));
      }
      edge = next.orElseThrow().module();
      insideM += gapM + depthM(edge, side);
    }
    return Optional.empty();
  }

  private Optional<Neighbour> next(PlacedModule module, Side side) {
    List<Neighbour> found = index.beside(module, side, lookM);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  private static double depthM(PlacedModule module, Side side) {
    return side == Side.LEFT || side == Side.RIGHT ? module.alongM() : module.upM();
  }
}
