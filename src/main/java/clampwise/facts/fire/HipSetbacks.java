package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Measures how far arrays stay from hips and valleys that have modules on both their sides. */
final class HipSetbacks {

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit least;
  private final Neighbours neighbours;

  HipSetbacks(Access access, Outcome<Coverage> coverage, Limit least) {
    this.access = access;
    this.coverage = coverage;
    this.least = least;
    this.neighbours = new Neighbours(access);
  }

  void ask(List<PlaneLayout> steep) {
    for (PlaneLayout plane : steep) {
      for (int n = 0; n < plane.edges().size(); n++) {
        PlaneEdge edge = plane.edges().get(n);
        if (Neighbours.slanted(plane).anyMatch(edge::equals)) {
          ask(plane, edge, subject(plane).part("edge " + (n + 1)));
        }
      }
    }
  }

  private static Subject subject(PlaneLayout plane) {
    return Access.subject("hips and valleys").part("planes." + plane.name());
  }

  private void ask(PlaneLayout plane, PlaneEdge edge, Subject subject) {
    Optional<PlaneLayout> across = neighbours.across(plane, edge);
    boolean near = nearestM(plane, edge) < Snap.m(least.si());
    if (across.isEmpty() && near) {
      String kind = Choice.word(edge.kind());
      access.missing(
          HipSetback.class,
          subject,
          access.unknown(
              "which plane lies across the " + kind + " of " + plane.name(), "adjacent"));
    } else {
      access.add(fact(plane, edge, subject, across));
    }
  }

  private static double awayM(PlacedModule module, PlaneEdge edge) {
    return Snap.m(Blocker.of(module).distanceM(edge.line(), Double.POSITIVE_INFINITY));
  }

  private static double nearestM(PlaneLayout plane, PlaneEdge edge) {
    return awayM(nearest(plane, edge), edge);
  }

  private static PlacedModule nearest(PlaneLayout plane, PlaneEdge edge) {
    return Access.modules(plane).stream()
        .min(Comparator.comparingDouble(module -> awayM(module, edge)))
        .orElseThrow();
  }

  private HipSetback fact(
      PlaneLayout plane, PlaneEdge edge, Subject subject, Optional<PlaneLayout> across) {
    boolean bare = across.filter(other -> Access.modules(other).isEmpty()).isPresent();
    double leastM = bare ? 0 : Snap.m(least.si());
    double distanceM = nearestM(plane, edge);
    List<PlacedModule> near =
        Access.modules(plane).stream().filter(module -> awayM(module, edge) < leastM).toList();
    return new HipSetback(
        subject,
        subject,
        nearest(plane, edge).at(),
        Shown.small(Shown.of(plane)),
        plane.name(),
        Choice.word(edge.kind()),
        across.map(PlaneLayout::name).orElse("the plane across"),
        nearest(plane, edge).name(),
        distanceM,
        leastM,
        Snap.m(Math.max(0, leastM - distanceM)),
        near.isEmpty() ? "" : new Dropped(plane, near).words(coverage),
        Optional.of(least));
  }
}
