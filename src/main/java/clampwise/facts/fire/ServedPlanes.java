package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Plane.EdgeKind;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the pathways that serve each plane with an array: on it, beside it or across their
 * common edge, or, where the rule set says so, on the plane itself alone.
 */
final class ServedPlanes {

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit width;
  private final PathwayCount count;
  private final Neighbours neighbours;

  ServedPlanes(Access access, Outcome<Coverage> coverage, Limit width, PathwayCount count) {
    this.access = access;
    this.coverage = coverage;
    this.width = width;
    this.count = count;
    this.neighbours = new Neighbours(access);
  }

  void ask(List<PlaneLayout> steep) {
    for (PlaneLayout plane : steep) {
      if (plane.outline().isEmpty()) {
        missing(plane, plane.reading().outlineUnknown());
      } else {
        access.limit("array-plane-pathways-least").ifPresent(least -> shared(plane, least));
        ownLeast(plane).ifPresent(least -> own(plane, least));
      }
    }
  }

  private void missing(PlaneLayout plane, String reason) {
    access.missing(PlanePathways.class, subject(plane), reason);
  }

  private static Subject subject(PlaneLayout plane) {
    return Access.subject("pathways").part("planes." + plane.name());
  }

  private Optional<Limit> ownLeast(PlaneLayout plane) {
    boolean hip = plane.edges().stream().map(PlaneEdge::kind).anyMatch(EdgeKind.HIP::equals);
    return access
        .limit("own-hip-plane-pathways-least")
        .filter(least -> hip)
        .or(() -> access.limit("own-plane-pathways-least"));
  }

  /** Asks for pathways on a plane itself. */
  void own(PlaneLayout plane, Limit least) {
    if (Way.upTo(plane).isEmpty()) {
      missing(
          plane,
          "plane " + plane.name() + " comes to a point; which way serves it, a person has to see");
      return;
    }
    int found = count.pastModules(plane);
    Optional<Dropped> drop =
        least.si() > 1 ? Clearing.ofBothSides(plane, width.si()) : Clearing.of(plane, width.si());
    access.add(fact(plane, "on it", Math.min(found, (int) least.si()), least, drop));
  }

  private void shared(PlaneLayout plane, Limit least) {
    String where = "on it, on an adjacent plane or across their edge";
    if (count.isWalkable(plane) || neighbours.serve(plane, width.si(), count)) {
      access.add(fact(plane, where, 1, least, Optional.empty()));
    } else if (neighbours.areUnknown(plane)) {
      String what = "which planes meet plane " + plane.name();
      missing(plane, access.unknown(what, "adjacent"));
    } else {
      access.add(fact(plane, where, 0, least, Clearing.of(plane, width.si())));
    }
  }

  private PlanePathways fact(
      PlaneLayout plane, String where, int found, Limit least, Optional<Dropped> drop) {
    return new PlanePathways(
        subject(plane),
        subject(plane),
        drop.flatMap(Dropped::at).orElseGet(() -> Access.modules(plane).get(0).at()),
        Shown.small(Shown.of(plane)),
        plane.name(),
        width.si(),
        where,
        found,
        least.si(),
        drop.filter(some -> !some.modules().isEmpty())
            .map(some -> some.words(coverage))
            .orElse("make room for a straight path from eave to ridge"),
        Optional.of(least));
  }
}
