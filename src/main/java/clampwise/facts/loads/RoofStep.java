package clampwise.facts.loads;

import clampwise.calc.Snap;
import clampwise.facts.layout.EdgeDistance;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Job;
import clampwise.job.Loads;
import clampwise.job.Loads.HigherRoof;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Quantity.Slope;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * Where a plane ends at a wall or a step, above which a higher roof may stand. Distances are in
 * plan.
 */
record RoofStep(PlaneLayout plane) {

  private static final Set<EdgeKind> KINDS = EnumSet.of(EdgeKind.WALL, EdgeKind.STEP);

  List<PlaneEdge> edges() {
    return plane.edges().stream().filter(edge -> KINDS.contains(edge.kind())).toList();
  }

  /** What a job says of a higher roof beside the plane. */
  Optional<HigherRoof> higherRoof(Job job) {
    return job.loads()
        .flatMap(Loads::snow)
        .flatMap(Loads.Snow::higherRoof)
        .filter(higher -> higher.beside().value().equals(plane.name()));
  }

  /** Why it is not known where a higher roof begins, if so. */
  Optional<String> unknown() {
    if (plane.outline().isEmpty()) {
      return Optional.of(plane.reading().outlineUnknown());
    }
    return edges().isEmpty()
        ? Optional.of(
            "plane " + plane.name() + " has no edge of kind step or wall for the higher roof")
        : Optional.empty();
  }

  /** Length of this plane away from the step: what wind can blow against the step [m]. */
  double fetchM() {
    return Snap.m(edges().stream().mapToDouble(this::fetchM).max().orElse(0));
  }

  private double fetchM(PlaneEdge step) {
    LineSegment line = inPlan(step.line());
    return plane.edges().stream()
        .map(edge -> inPlan(edge.line()))
        .flatMapToDouble(
            edge ->
                DoubleStream.of(
                    line.distancePerpendicular(edge.p0), line.distancePerpendicular(edge.p1)))
        .max()
        .orElse(0);
  }

  private LineSegment inPlan(LineSegment line) {
    double cosine = plane.plane().slope().map(Slope::rad).map(Math::cos).orElse(1.0);
    return new LineSegment(
        new Coordinate(line.p0.x, line.p0.y * cosine),
        new Coordinate(line.p1.x, line.p1.y * cosine));
  }

  /** Distance from the nearest step to the nearest point of a module [m]. */
  double fromM(PlacedModule module) {
    return Snap.m(
        EdgeDistance.of(plane, module).stream()
            .filter(distance -> KINDS.contains(distance.edge().kind()))
            .mapToDouble(distance -> distance.inPlanM().orElse(distance.inPlaneM()))
            .min()
            .orElse(Double.POSITIVE_INFINITY));
  }
}
