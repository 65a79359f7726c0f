package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The sides of a plane along which a pathway runs beside its array. */
final class FreeSides {

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final PlaneLayout plane;
  private final Limit width;

  /**
   * A side that may be free.
   *
   * @param near modules that stand in its pathway
   */
  private record Side(String name, List<PlacedModule> near) {

    boolean isFree() {
      return near.isEmpty();
    }
  }

  FreeSides(Access access, Outcome<Coverage> coverage, PlaneLayout plane, Limit width) {
    this.access = access;
    this.coverage = coverage;
    this.plane = plane;
    this.width = width;
  }

  private List<Side> sides() {
    Predicate<PlaneEdge> bottom = Way.lowest(plane);
    Predicate<PlaneEdge> top = Way.highest(plane);
    Predicate<PlaneEdge> left = edge -> edge.line().p1.y < edge.line().p0.y;
    Predicate<PlaneEdge> upright = bottom.or(top).negate();
    List<Side> sides = new ArrayList<>();
    add(sides, "the left", upright.and(left));
    add(sides, "the right", upright.and(left.negate()));
    add(sides, "the top", top);
    if (new Bottom(access, plane).counts()) {
      add(sides, "the bottom", bottom);
    }
    return sides;
  }

  /** Whether the bottom edge of a plane counts as a pathway: on flat roofs only. */
  private record Bottom(Access access, PlaneLayout plane) {

    private static final double SAME_RAD = 1e-9;

    boolean counts() {
      double mostRad = access.limit("bottom-side-slope-most").orElseThrow().si();
      return plane.plane().slope().orElseThrow().rad() <= mostRad + SAME_RAD;
    }
  }

  private void add(List<Side> sides, String name, Predicate<PlaneEdge> is) {
    List<PlaneEdge> edges = plane.edges().stream().filter(is).toList();
    if (!edges.isEmpty()) {
      sides.add(
          new Side(
              name,
              Access.modules(plane).stream().filter(module -> isNear(module, edges)).toList()));
    }
  }

  private boolean isNear(PlacedModule module, List<PlaneEdge> edges) {
    Blocker body = Blocker.of(module);
    return edges.stream()
        .mapToDouble(edge -> body.distanceM(edge.line(), Double.POSITIVE_INFINITY))
        .anyMatch(m -> Snap.m(m) < Snap.m(width.si()));
  }

  ArraySides fact(Subject subject, Limit least) {
    List<Side> sides = sides();
    List<Side> free = sides.stream().filter(Side::isFree).toList();
    Optional<Dropped> drop =
        sides.stream()
            .filter(side -> !side.isFree())
            .min(Comparator.comparing(side -> side.near().size()))
            .map(side -> new Dropped(plane, side.near()));
    return new ArraySides(
        subject,
        subject,
        drop.flatMap(Dropped::at).orElseGet(() -> Access.modules(plane).get(0).at()),
        Shown.small(Shown.of(plane)),
        plane.name(),
        width.si(),
        free.isEmpty() ? "none" : free.stream().map(Side::name).collect(Collectors.joining(", ")),
        free.size(),
        least.si(),
        drop.map(some -> some.words(coverage)).orElse("make room for a pathway along a side"),
        Optional.of(least));
  }
}
