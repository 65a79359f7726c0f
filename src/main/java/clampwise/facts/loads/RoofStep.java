package clampwise.facts.loads;

import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Quantity.Slope;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Where a plane ends at a wall or a step, above which a higher roof may stand. */
record RoofStep(PlaneLayout plane) {

  static final Set<EdgeKind> KINDS = EnumSet.of(EdgeKind.WALL, EdgeKind.STEP);

  List<PlaneEdge> edges() {
    return plane.edges().stream().filter(edge -> KINDS.contains(edge.kind())).toList();
  }

  /** Length of this plane away from the step, in plan: what wind can blow against the step [m]. */
  double fetchM() {
    return edges().stream().mapToDouble(this::fetchM).max().orElse(0);
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
}
