package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Choice;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Quantity.Length;
import clampwise.units.QuantityPrint;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Measures the clear perimeter of roofs that are no dwellings. */
final class Perimeters {

  private static final Subject PERIMETER = Access.subject("perimeter");
  private static final Set<EdgeKind> ROOF_ENDS =
      EnumSet.of(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.WALL, EdgeKind.STEP);

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit wide;
  private final Limit narrow;

  Perimeters(Access access, Outcome<Coverage> coverage, Limit wide, Limit narrow) {
    this.access = access;
    this.coverage = coverage;
    this.wide = wide;
    this.narrow = narrow;
  }

  static boolean endsRoof(PlaneEdge edge) {
    return ROOF_ENDS.contains(edge.kind());
  }

  void ask() {
    Optional<Long> short_ = shortAxes();
    for (PlaneLayout plane : access.arrayPlanes()) {
      if (plane.outline().isEmpty()) {
        access.missing(PerimeterPath.class, subject(plane), plane.reading().outlineUnknown());
      }
      for (int n = 0; n < plane.edges().size(); n++) {
        if (endsRoof(plane.edges().get(n))) {
          ask(plane, n, short_);
        }
      }
    }
  }

  private static Subject subject(PlaneLayout plane) {
    return PERIMETER.part("planes." + plane.name());
  }

  /** How many of length and width of the building are short enough; empty if one is unknown. */
  private Optional<Long> shortAxes() {
    double mostM = access.limit("perimeter-axis-most").orElseThrow().si();
    Optional<Building> building = access.layout().job().building();
    List<Length> axes =
        Stream.of(building.flatMap(Building::length), building.flatMap(Building::width))
            .flatMap(Optional::stream)
            .toList();
    long few = axes.stream().filter(axis -> Snap.m(axis.m()) <= Snap.m(mostM)).count();
    boolean enough = few >= leastShort();
    return axes.size() == 2 || enough ? Optional.of(few) : Optional.empty();
  }

  private double leastShort() {
    return access.limit("perimeter-short-axes-least").orElseThrow().si();
  }

  private void ask(PlaneLayout plane, int number, Optional<Long> shortAxes) {
    PlaneEdge edge = plane.edges().get(number);
    PlacedModule nearest = nearest(plane, edge);
    double distanceM = distanceM(nearest, edge);
    boolean open = distanceM < Snap.m(wide.si()) && distanceM >= Snap.m(narrow.si());
    Subject subject = subject(plane).part("edge " + (number + 1));
    if (shortAxes.isEmpty() && open) {
      String reason = "the plan size of the building is not given";
      access.missing(PerimeterPath.class, subject, reason);
    } else {
      boolean small = shortAxes.map(few -> few >= leastShort()).orElse(distanceM < narrow.si());
      access.add(fact(subject, new Edge(plane, edge), nearest, small ? narrow : wide));
    }
  }

  private record Edge(PlaneLayout plane, PlaneEdge edge) {

    String words() {
      String kind = Choice.word(edge.kind());
      boolean upright = Math.abs(edge.line().p0.y - edge.line().p1.y) > 1e-6;
      String side = edge.line().p1.y < edge.line().p0.y ? "left " : "right ";
      return (upright ? side : "") + kind;
    }
  }

  private static PlacedModule nearest(PlaneLayout plane, PlaneEdge edge) {
    PlacedModule nearest = Access.modules(plane).get(0);
    double leastM = Double.POSITIVE_INFINITY;
    for (PlacedModule module : Access.modules(plane)) {
      double distanceM = Blocker.of(module).distanceM(edge.line(), leastM);
      if (distanceM < leastM) {
        nearest = module;
        leastM = distanceM;
      }
    }
    return nearest;
  }

  private static double distanceM(PlacedModule module, PlaneEdge edge) {
    return Snap.m(Blocker.of(module).distanceM(edge.line(), Double.POSITIVE_INFINITY));
  }

  private PerimeterPath fact(Subject subject, Edge at, PlacedModule module, Limit least) {
    double leastM = Snap.m(least.si());
    double distanceM = distanceM(module, at.edge());
    return new PerimeterPath(
        subject,
        PERIMETER,
        module.at(),
        Shown.small(Shown.of(at.plane())),
        at.plane().name(),
        at.words(),
        module.name(),
        distanceM,
        leastM,
        Snap.m(Math.max(0, leastM - distanceM)),
        where(least),
        distanceM < leastM ? cure(at, leastM) : "",
        Optional.of(least));
  }

  private String where(Limit least) {
    Limit most = access.limit("perimeter-axis-most").orElseThrow();
    String text = QuantityPrint.text(most.si(), most.unit());
    String both = leastShort() > 1 ? "both sides" : "a side";
    return least.equals(narrow)
        ? " on a building with " + both + " of no more than " + text
        : " on a building without " + both + " of no more than " + text;
  }

  private String cure(Edge at, double leastM) {
    List<PlacedModule> near =
        Access.modules(at.plane()).stream()
            .filter(module -> distanceM(module, at.edge()) < leastM)
            .toList();
    return new Dropped(at.plane(), near).words(coverage);
  }
}
