package clampwise.facts.loads;

import clampwise.calc.wind.PanelReach;
import clampwise.calc.wind.PanelSide;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Neighbour;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Building.RoofShape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what lies beyond the sides of an array, for the modules near them. */
final class ArraySides {

  /** A gap that ends where the standard stops looking is still seen. */
  private static final double BEYOND_M = 0.001;

  private record Cell(String field, int column, int row) {}

  private final Map<Cell, PlacedModule> cells = new HashMap<>();
  private final ModuleIndex index;
  private final RoofReach roof;
  private final PanelReach reach;
  private final double sameArrayM;
  private final double lookM;

  /** The arrays of a plane, seen as far as the standard looks. */
  ArraySides(PlaneLayout plane, PanelReach reach, Optional<RoofShape> shape) {
    this.index = ModuleIndex.of(plane);
    this.roof = new RoofReach(plane, shape);
    for (FieldLayout field : plane.fields()) {
      for (PlacedModule module : field.modules()) {
        cells.put(new Cell(module.field(), module.column(), module.row()), module);
      }
    }
    this.reach = reach;
    this.sameArrayM = reach.sameArrayM();
    this.lookM = reach.farthestM() + BEYOND_M;
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

  /** How far the standard looks for other modules [m]. */
  double lookM() {
    return reach.farthestM();
  }

  /** Distance from a module to the nearest other, if one is in sight [m]. */
  OptionalDouble nearestM(PlacedModule module) {
    return Arrays.stream(Side.values())
        .flatMap(side -> index.beside(module, side, lookM).stream())
        .mapToDouble(Neighbour::gapM)
        .min();
  }

  private double stripM(PlacedModule module) {
    return reach.stripM(Math.max(module.alongM(), module.upM()));
  }

  private Optional<PanelSide> side(PlacedModule module, Side side, double stripM) {
    PlacedModule edge = module;
    double insideM = 0;
    double nextPanelM = Double.POSITIVE_INFINITY;
    while (insideM < stripM) {
      Optional<Neighbour> next = next(edge, side);
      double gapM = next.map(Neighbour::gapM).orElse(Double.POSITIVE_INFINITY);
      nextPanelM = insideM == 0 ? gapM : nextPanelM;
      if (gapM > sameArrayM) {
        return Optional.of(new PanelSide(roof.edgeM(edge, side), gapM, nextPanelM, insideM));
      }
      edge = next.orElseThrow().module();
      insideM += gapM + depthM(edge, side);
    }
    return Optional.empty();
  }

  /** The neighbour in its own row or column, which nearly every module has, else any that faces. */
  private Optional<Neighbour> next(PlacedModule module, Side side) {
    PlacedModule beside = cells.get(cell(module, side));
    if (beside != null) {
      Neighbour near = Neighbour.of(module, beside, side);
      if (near.sharedM() > 0 && near.gapM() >= 0 && near.gapM() <= sameArrayM) {
        return Optional.of(near);
      }
    }
    List<Neighbour> found = index.beside(module, side, lookM);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  private static Cell cell(PlacedModule module, Side side) {
    return switch (side) {
      case LEFT -> new Cell(module.field(), module.column() - 1, module.row());
      case RIGHT -> new Cell(module.field(), module.column() + 1, module.row());
      case BELOW -> new Cell(module.field(), module.column(), module.row() - 1);
      case ABOVE -> new Cell(module.field(), module.column(), module.row() + 1);
    };
  }

  private static double depthM(PlacedModule module, Side side) {
    return side == Side.LEFT || side == Side.RIGHT ? module.alongM() : module.upM();
  }
}
