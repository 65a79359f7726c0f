package clampwise.facts.layout;

import clampwise.job.Plane.EdgeKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The outline of a plane as seen in plan, where the wind standard measures its strips and corners.
 */
final class PlanDrawing {

  private record PlanEdge(EdgeKind kind, LineSegment line) {}

  private final Geometry area;
  private final List<PlanEdge> edges;

  /**
   * A plan of an outline.
   *
   * @param planPerSlope cosine of the slope [-]
   */
  PlanDrawing(Polygon outline, List<PlaneEdge> edges, double planPerSlope) {
    this.area = PlaneAxes.snapped(PlaneAxes.stretchedUp(outline, planPerSlope));
    this.edges =
        edges.stream()
            .map(edge -> new PlanEdge(edge.kind(), inPlan(edge.line(), planPerSlope)))
            .toList();
  }

  Geometry area() {
    return area;
  }

  /** Strips along all edges of some kinds. */
  Geometry strips(Set<EdgeKind> kinds, double widthM) {
    return inside(
        edges.stream()
            .filter(edge -> kinds.contains(edge.kind()))
            .map(edge -> strip(edge.line(), 0, edge.line().getLength(), widthM)));
  }

  Geometry strips(EdgeKind kind, double widthM) {
    return strips(Set.of(kind), widthM);
  }

  /** An L at each outward corner of two edges of some kinds, along both of them. */
  Geometry corners(Set<EdgeKind> kinds, double legM, double widthM) {
    return inside(
        IntStream.range(0, edges.size())
            .boxed()
            .filter(i -> isCorner(before(i), edges.get(i), kinds))
            .flatMap(i -> corner(before(i).line(), edges.get(i).line(), legM, widthM)));
  }

  static Geometry both(Geometry one, Geometry other) {
    return cut(one, other, Rectangles::both)
        .orElseGet(() -> OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION));
  }

  static Geometry either(Geometry one, Geometry other) {
    return cut(one, other, Rectangles::and)
        .orElseGet(() -> OverlayNGRobust.overlay(one, other, OverlayNG.UNION));
  }

  static Geometry without(Geometry one, Geometry other) {
    return cut(one, other, Rectangles::without)
        .orElseGet(() -> OverlayNGRobust.overlay(one, other, OverlayNG.DIFFERENCE));
  }

  private static Optional<Geometry> cut(
      Geometry one, Geometry other, BinaryOperator<Rectangles> operation) {
    return Rectangles.of(one)
        .flatMap(a -> Rectangles.of(other).flatMap(b -> operation.apply(a, b).apart()));
  }

  private PlanEdge before(int i) {
    return edges.get((i + edges.size() - 1) % edges.size());
  }

  private static boolean isCorner(PlanEdge before, PlanEdge after, Set<EdgeKind> kinds) {
    return kinds.contains(before.kind())
        && kinds.contains(after.kind())
        && before.line().orientationIndex(after.line().p1) > 0;
  }

  private static Stream<Polygon> corner(
      LineSegment before, LineSegment after, double legM, double widthM) {
    double endM = before.getLength();
    return Stream.of(
        strip(before, Math.max(0, endM - legM), endM, widthM),
        strip(after, 0, Math.min(legM, after.getLength()), widthM));
  }

  /** A rectangle on the inner, left side of an edge that runs anticlockwise. */
  private static Polygon strip(LineSegment edge, double fromM, double toM, double widthM) {
    double lengthM = edge.getLength();
    return PlaneAxes.polygon(
        PlaneAxes.snapped(edge.pointAlong(fromM / lengthM)),
        PlaneAxes.snapped(edge.pointAlong(toM / lengthM)),
        PlaneAxes.snapped(edge.pointAlongOffset(toM / lengthM, widthM)),
        PlaneAxes.snapped(edge.pointAlongOffset(fromM / lengthM, widthM)));
  }

  private Geometry inside(Stream<Polygon> parts) {
    return parts
        .map(part -> both(part, area))
        .reduce(PlanDrawing::either)
        .orElseGet(PlaneAxes.shapes()::createPolygon);
  }

  private static LineSegment inPlan(LineSegment line, double planPerSlope) {
    return new LineSegment(
        new Coordinate(line.p0.x, line.p0.y * planPerSlope),
        new Coordinate(line.p1.x, line.p1.y * planPerSlope));
  }
}
