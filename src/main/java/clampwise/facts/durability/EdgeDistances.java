package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Plane.EdgeKind;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds modules against valleys and gutters. Those too near are answers one by one; where none is,
 * the nearest of each field is the answer.
 */
record EdgeDistances(Weathering weathering) {

  /** Makes a fact of a module and its distance. */
  private interface Maker {
    Fact make(FieldLayout field, PlacedModule module, double distanceM);
  }

  void ask() {
    for (PlaneLayout plane : weathering.layout().planes()) {
      if (!plane.fields().isEmpty()) {
        List<PlaneEdge> valleys = edges(plane, EdgeKind.VALLEY);
        Limit valley = weathering.limit("valley-distance-least");
        ask(plane, valleys, Snap.m(valley.si()), (f, m, d) -> valley(f, m, d, valley));
        askGutter(plane);
      }
    }
  }

  private void askGutter(PlaneLayout plane) {
    Optional<Flag> gutter = plane.plane().gutter();
    List<PlaneEdge> eaves = edges(plane, EdgeKind.EAVE);
    if (gutter.filter(Flag::value).isPresent()) {
      Limit eave = weathering.limit("eave-distance-least");
      ask(plane, eaves, Snap.m(eave.si()), (f, m, d) -> eave(f, m, d, eave));
    } else if (gutter.isEmpty() && !eaves.isEmpty() && weathering.job().roof().isPresent()) {
      String what = "whether plane " + plane.name() + " has gutters";
      weathering.missing(
          EaveDistance.class,
          Subjects.plane(plane.name()).part("gutter"),
          weathering.lacks(what, "planes", plane.name(), "gutter"));
    }
  }

  private static List<PlaneEdge> edges(PlaneLayout plane, EdgeKind kind) {
    List<PlaneEdge> edges = new ArrayList<>();
    for (PlaneEdge edge : plane.edges()) {
      if (edge.kind() == kind) {
        edges.add(edge);
      }
    }
    return edges;
  }

  private void ask(PlaneLayout plane, List<PlaneEdge> edges, double leastM, Maker maker) {
    if (!edges.isEmpty()) {
      plane.fields().forEach(field -> ask(field, edges, leastM, maker));
    }
  }

  /** A module on the edge itself or past it is off its plane, which is found elsewhere. */
  private void ask(FieldLayout field, List<PlaneEdge> edges, double leastM, Maker maker) {
    Optional<Fact> nearest = Optional.empty();
    double nearestM = Double.MAX_VALUE;
    boolean anyTooNear = false;
    for (PlacedModule module : field.modules()) {
      double distanceM = distanceM(module, edges);
      if (distanceM > 0 && distanceM < leastM) {
        weathering.add(maker.make(field, module, distanceM));
        anyTooNear = true;
      } else if (distanceM > 0 && distanceM < nearestM) {
        nearestM = distanceM;
        nearest = Optional.of(maker.make(field, module, distanceM));
      }
    }
    if (!anyTooNear) {
      nearest.ifPresent(weathering::add);
    }
  }

  /** Distance of a module from the nearest of some edges [m]. */
  static double distanceM(PlacedModule module, List<PlaneEdge> edges) {
    double nearestM = Double.MAX_VALUE;
    for (PlaneEdge edge : edges) {
      nearestM = Math.min(nearestM, new ModuleReach(module).toM(edge.line()));
    }
    return Snap.m(nearestM);
  }

  private static ValleyDistance valley(
      FieldLayout field, PlacedModule module, double distanceM, Limit least) {
    return new ValleyDistance(
        Subjects.module(module).part("valley"),
        cause(field, "valley"),
        module.at(),
        unit(field),
        module.name(),
        distanceM,
        Snap.m(least.si()),
        Snap.m(Math.max(0, Snap.m(least.si()) - distanceM)),
        Optional.of(least));
  }

  private static EaveDistance eave(
      FieldLayout field, PlacedModule module, double distanceM, Limit least) {
    return new EaveDistance(
        Subjects.module(module).part("gutter"),
        cause(field, "gutter"),
        module.at(),
        unit(field),
        module.name(),
        distanceM,
        Snap.m(least.si()),
        Snap.m(Math.max(0, Snap.m(least.si()) - distanceM)),
        Optional.of(least));
  }

  private static Subject cause(FieldLayout field, String edge) {
    return Subjects.field(field.name()).part(edge);
  }

  private static Unit unit(FieldLayout field) {
    return Shown.small(Shown.of(field));
  }
}
