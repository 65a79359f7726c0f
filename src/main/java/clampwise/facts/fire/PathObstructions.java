package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Looks whether pathways past the modules also lead past everything else on the roof. */
final class PathObstructions {

  private final Access access;
  private final Limit width;
  private final PathwayCount count;

  PathObstructions(Access access, Limit width, PathwayCount count) {
    this.access = access;
    this.width = width;
    this.count = count;
  }

  void ask() {
    for (PlaneLayout plane : access.layout().planes()) {
      List<Obstacle> obstacles = PathwayCount.obstacles(plane);
      if (!obstacles.isEmpty() && count.isWalkable(plane)) {
        access.add(fact(plane, obstacles));
      }
    }
  }

  private PathObstruction fact(PlaneLayout plane, List<Obstacle> obstacles) {
    int least = count.pastModules(plane);
    int free = count.past(plane, obstacles);
    List<Obstacle> guilty = free < least ? guilty(plane, obstacles, free) : obstacles;
    Subject subject =
        Access.subject("pathways").part("planes." + plane.name()).part("obstructions");
    return new PathObstruction(
        subject,
        subject,
        guilty.get(0).at(),
        Shown.small(Shown.of(plane)),
        plane.name(),
        guilty.stream().map(Obstacle::name).collect(Collectors.joining(", ")),
        width.si(),
        free,
        least,
        Optional.of(width));
  }

  /** Those without which more would be free; all of them where it takes several. */
  private List<Obstacle> guilty(PlaneLayout plane, List<Obstacle> obstacles, int free) {
    List<Obstacle> alone =
        obstacles.stream()
            .filter(one -> count.past(plane, without(obstacles, one)) > free)
            .toList();
    return alone.isEmpty() ? obstacles : alone;
  }

  private static List<Obstacle> without(List<Obstacle> obstacles, Obstacle one) {
    return obstacles.stream().filter(other -> !other.name().equals(one.name())).toList();
  }
}
