package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Plane.EdgeKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * The least distance of a module from an edge of its plane, 0 where it reaches over the edge.
 *
 * @param inPlaneM measured on the slope [m]
 * @param inPlanM measured on a plan of the roof [m]; empty if the slope is not given
 */
public record EdgeDistance(PlaneEdge edge, double inPlaneM, OptionalDouble inPlanM) {

  /** Distances of a module from all edges of its plane, in the order of the edges. */
  public static List<EdgeDistance> of(PlaneLayout plane, PlacedModule module) {
    OptionalDouble cosine =
        plane.plane().slope().stream().mapToDouble(slope -> Math.cos(slope.rad())).findFirst();
    return plane.edges().stream().map(edge -> of(edge, module, cosine)).toList();
  }

  /** Distance of a module from the nearest edge of a kind, measured on the slope. */
  public static Optional<EdgeDistance> nearest(
      PlaneLayout plane, PlacedModule module, EdgeKind kind) {
    return of(plane, module).stream()
        .filter(distance -> distance.edge().kind() == kind)
        .min(Comparator.comparingDouble(EdgeDistance::inPlaneM));
  }

  private static EdgeDistance of(PlaneEdge edge, PlacedModule module, OptionalDouble cosine) {
    return new EdgeDistance(
        edge,
        distanceM(edge.line(), module, 1),
        cosine.isPresent()
            ? OptionalDouble.of(distanceM(edge.line(), module, cosine.getAsDouble()))
            : OptionalDouble.empty());
  }

  /** Distance with everything up the slope shortened by a factor. */
  private static double distanceM(LineSegment edge, PlacedModule module, double factor) {
    LineSegment line = new LineSegment(shortened(edge.p0, factor), shortened(edge.p1, factor));
    Coordinate[] corners = corners(module, factor);
    boolean within = within(line.p0, corners) || within(line.p1, corners);
    double leastM = Double.POSITIVE_INFINITY;
    for (int i = 0; i < corners.length; i++) {
      LineSegment side = new LineSegment(corners[i], corners[(i + 1) % corners.length]);
      leastM = Math.min(leastM, line.distance(side));
    }
    return within ? 0 : Snap.m(leastM);
  }

  private static boolean within(Coordinate point, Coordinate[] corners) {
    return corners[0].x <= point.x
        && point.x <= corners[2].x
        && corners[0].y <= point.y
        && point.y <= corners[2].y;
  }

  private static Coordinate[] corners(PlacedModule module, double factor) {
    double bottomM = module.bottomM() * factor;
    double topM = module.topM() * factor;
    return new Coordinate[] {
      new Coordinate(module.leftM(), bottomM),
      new Coordinate(module.rightM(), bottomM),
      new Coordinate(module.rightM(), topM),
      new Coordinate(module.leftM(), topM)
    };
  }

  private static Coordinate shortened(Coordinate point, double factor) {
    return new Coordinate(point.x, point.y * factor);
  }
}
