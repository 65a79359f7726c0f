package clampwise.facts.loads;

import clampwise.calc.wind.PanelReach;
import clampwise.calc.wind.PanelSide;
import clampwise.facts.layout.Neighbour;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what lies beyond the sides of an array, for the modules near them. */
final class ArraySides {

  /** A gap that ends where the standard stops looking is still seen. */
  private static final double BEYOND_M = 0.001;

  private final PlaneModules modules;
  private final RoofReach roof;
  private final PanelReach reach;
  private final double sameArrayM;
  private final double lookM;

  /** The arrays of a plane, seen as far as the standard looks. */
  ArraySides(PlaneModules modules, RoofReach roof, PanelReach reach) {
    this.modules = modules;
    this.roof = roof;
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
        .flatMap(side -> modules.index().beside(module, side, lookM).stream())
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
    Optional<PlacedModule> beside = modules.next(module, side);
    if (beside.isPresent()) {
      Neighbour near = Neighbour.of(module, beside.get(), side);
      if (near.sharedM() > 0 && near.gapM() >= 0 && near.gapM() <= sameArrayM) {
        return Optional.of(near);
      }
    }
    List<Neighbour> found = modules.index().beside(module, side, lookM);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  private static double depthM(PlacedModule module, Side side) {
    return side == Side.LEFT || side == Side.RIGHT ? module.alongM() : module.upM();
  }
}
