package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.facts.layout.Neighbour.Side;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds modules of all fields of a plane by place, without comparing all with all. */
public final class ModuleIndex {

  /** Modules that only touch do not overlap. */
  private static final double TOUCH_M = 1e-6;

  private record Entry(int order, PlacedModule module) {}

  private final STRtree tree = new STRtree();

  private ModuleIndex(List<PlacedModule> modules) {
    for (int i = 0; i < modules.size(); i++) {
      tree.insert(box(modules.get(i)), new Entry(i, modules.get(i)));
    }
    tree.build();
  }

  /** The index of all modules of a plane. */
  public static ModuleIndex of(PlaneLayout plane) {
    return of(plane.fields().stream().flatMap(field -> field.modules().stream()).toList());
  }

  /** The index of some modules. */
  public static ModuleIndex of(List<PlacedModule> modules) {
    return new ModuleIndex(modules);
  }

  /** Modules that reach into a rectangle or touch it, in the order of the layout. */
  public List<PlacedModule> near(double leftM, double bottomM, double rightM, double topM) {
    return in(new Envelope(leftM, rightM, bottomM, topM)).toList();
  }

  /** Other modules that share area with a module. */
  public List<PlacedModule> overlapping(PlacedModule module) {
    Envelope inner = box(module);
    inner.expandBy(-TOUCH_M);
    return others(module, inner).toList();
  }

  /**
   * Modules that face a side of a module, the nearest first.
   *
   * @param reachM how far away they may be [m]
   */
  public List<Neighbour> beside(PlacedModule module, Side side, double reachM) {
    Envelope reach = box(module);
    reach.expandBy(reachM);
    return others(module, reach)
        .map(other -> neighbour(module, other, side))
        .filter(near -> near.sharedM() > TOUCH_M)
        .filter(near -> -TOUCH_M <= near.gapM() && near.gapM() <= reachM)
        .sorted(Comparator.comparingDouble(Neighbour::gapM))
        .toList();
  }

  static Neighbour neighbour(PlacedModule from, PlacedModule to, Side side) {
    double gapM =
        switch (side) {
          case LEFT -> from.leftM() - to.rightM();
          case RIGHT -> to.leftM() - from.rightM();
          case BELOW -> from.bottomM() - to.topM();
          case ABOVE -> to.bottomM() - from.topM();
        };
    double sharedM =
        switch (side) {
          case LEFT, RIGHT -> shared(from, to, PlacedModule::bottomM, PlacedModule::topM);
          case BELOW, ABOVE -> shared(from, to, PlacedModule::leftM, PlacedModule::rightM);
        };
    return new Neighbour(to, side, Snap.m(gapM), Snap.m(sharedM));
  }

  private static double shared(
      PlacedModule one,
      PlacedModule other,
      Function<PlacedModule, Double> start,
      Function<PlacedModule, Double> end) {
    return Math.min(end.apply(one), end.apply(other))
        - Math.max(start.apply(one), start.apply(other));
  }

  private Stream<PlacedModule> others(PlacedModule module, Envelope box) {
    return in(box).filter(other -> !other.name().equals(module.name()));
  }

  private Stream<PlacedModule> in(Envelope box) {
    List<?> found = tree.query(box);
    return found.stream()
        .map(Entry.class::cast)
        .sorted(Comparator.comparingInt(Entry::order))
        .map(Entry::module);
  }

  private static Envelope box(PlacedModule module) {
    return new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM());
  }
}
