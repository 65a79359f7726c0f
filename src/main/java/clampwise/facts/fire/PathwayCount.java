package clampwise.facts.fire;

import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Obstruction.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Counts the pathways of planes, each plane once. */
final class PathwayCount {

  /** What people step over. */
  private static final Set<Kind> FLAT =
      EnumSet.of(Kind.DRAIN, Kind.SNOW_RETENTION, Kind.RIDGE_VENT);

  private final double widthM;
  private final int enough;
  private final Map<String, Integer> past = new HashMap<>();

  PathwayCount(double widthM, int enough) {
    this.widthM = widthM;
    this.enough = enough;
  }

  /** Pathways of a plane with a known outline past its modules. */
  int pastModules(PlaneLayout plane) {
    return past.computeIfAbsent(plane.name(), name -> count(plane, modules(plane)));
  }

  boolean isWalkable(PlaneLayout plane) {
    return plane.outline().isPresent() && pastModules(plane) > 0;
  }

  /** Pathways of a plane past its modules and some obstructions. */
  int past(PlaneLayout plane, List<Obstacle> obstacles) {
    List<Blocker> blockers = new ArrayList<>(modules(plane));
    obstacles.forEach(obstacle -> blockers.add(Blocker.of(obstacle)));
    return count(plane, blockers);
  }

  /** What nobody steps over on a plane. */
  static List<Obstacle> obstacles(PlaneLayout plane) {
    return plane.obstacles().stream()
        .filter(obstacle -> !FLAT.contains(obstacle.obstruction().kind().value()))
        .toList();
  }

  private static List<Blocker> modules(PlaneLayout plane) {
    return Access.modules(plane).stream().map(Blocker::of).toList();
  }

  private int count(PlaneLayout plane, List<Blocker> blockers) {
    Stream<Integer> counts =
        Way.upTo(plane).stream().map(way -> Corridors.count(blockers, way, widthM, enough));
    return counts.max(Integer::compare).orElse(0);
  }
}
