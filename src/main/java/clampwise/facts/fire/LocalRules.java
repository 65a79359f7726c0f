package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Fire.Occupancy;
import clampwise.job.Plane.EdgeKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Asks what only local variants of fire codes ask, whatever the building is used for. */
final class LocalRules {

  private static final double SAME_RAD = 1e-9;

  private final Access access;
  private final Outcome<Coverage> coverage;

  LocalRules(Access access, Outcome<Coverage> coverage) {
    this.access = access;
    this.coverage = coverage;
  }

  void ask() {
    access.limit("array-sides-least").ifPresent(this::sides);
    access.limit("clear-path-width").ifPresent(this::clearPaths);
  }

  /** Free sides of each plane, or the smaller pathways of a small array beside another roof. */
  private void sides(Limit least) {
    Limit width = access.limit("pathway-width").orElseThrow();
    for (PlaneLayout plane : access.arrayPlanes()) {
      Subject subject = Access.subject("array sides").part("planes." + plane.name());
      if (plane.outline().isEmpty()) {
        access.missing(ArraySides.class, subject, plane.reading().outlineUnknown());
      } else if (plane.plane().slope().isEmpty()) {
        access.missing(ArraySides.class, subject, Slopes.unknown(plane));
      } else if (isSmall(plane)) {
        small(plane, width);
      } else {
        access.add(new FreeSides(access, coverage, plane, width).fact(subject, least));
      }
    }
  }

  /** A small array on a steep roof that another roof meets at a hip or valley. */
  private boolean isSmall(PlaneLayout plane) {
    double mostM2 = access.limit("small-array-most").orElseThrow().si();
    double slopeRad = access.limit("small-array-slope-more").orElseThrow().si();
    return plane.edges().stream()
            .map(PlaneEdge::kind)
            .anyMatch(kind -> kind == EdgeKind.HIP || kind == EdgeKind.VALLEY)
        && plane.plane().slope().orElseThrow().rad() > slopeRad + SAME_RAD
        && coverage.result().filter(known -> known.onSlopeM2() <= mostM2).isPresent();
  }

  private void small(PlaneLayout plane, Limit width) {
    Limit ridge = access.limit("small-array-ridge").orElseThrow();
    new RidgeSetbacks(access, coverage, ridge).ask(List.of(plane));
    double mostShare = access.limit("small-array-coverage-most").orElseThrow().si();
    if (coverage.result().filter(known -> known.share() > mostShare).isPresent()) {
      Limit least = access.limit("small-array-pathways-least").orElseThrow();
      PathwayCount count = new PathwayCount(width.si(), 1);
      new ServedPlanes(access, coverage, width, count).own(plane, least);
    }
  }

  /** Paths from front to rear and from side to side of flat roofs; the ridge of pitched ones. */
  private void clearPaths(Limit width) {
    Slopes slopes = new Slopes(access);
    for (PlaneLayout plane : access.arrayPlanes()) {
      if (slopes.isExempt(plane) && plane.outline().isPresent()) {
        access.add(clearPath(plane, width, Axis.UP, Way.upTo(plane)));
        access.add(clearPath(plane, width, Axis.ALONG, Way.across(plane)));
      }
    }
    if (access.occupancy() == Occupancy.COMMERCIAL) {
      slopes.ask();
      access
          .limit("ridge-wide")
          .ifPresent(wide -> new RidgeSetbacks(access, coverage, wide).ask(slopes.steepArrays()));
    }
  }

  private ClearPath clearPath(PlaneLayout plane, Limit width, Axis axis, List<Way> ways) {
    List<PlacedModule> modules = Access.modules(plane);
    List<Blocker> blockers = modules.stream().map(Blocker::of).toList();
    int found =
        ways.stream()
            .map(way -> Corridors.count(blockers, way, width.si(), 1))
            .max(Comparator.naturalOrder())
            .orElse(0);
    Axis across = axis == Axis.UP ? Axis.ALONG : Axis.UP;
    double lowM = modules.stream().mapToDouble(across::startM).min().orElseThrow();
    double highM = modules.stream().mapToDouble(across::endM).max().orElseThrow() - width.si();
    Dropped drop =
        new Dropped(
            plane, new Clearing(modules, across, width.si()).fewest(lowM, Math.max(lowM, highM)));
    Subject subject =
        Access.subject("clear paths").part("planes." + plane.name()).part(axis.words());
    return new ClearPath(
        subject,
        subject,
        drop.at().orElseGet(() -> modules.get(0).at()),
        Shown.small(Shown.of(plane)),
        plane.name(),
        axis.words(),
        width.si(),
        found,
        1,
        found > 0 ? "" : drop.words(coverage),
        Optional.of(width));
  }
}
