package clampwise.facts.layout;

import clampwise.job.Choice;
import clampwise.job.Named;
import clampwise.job.Plane;
import clampwise.job.Plane.Corner;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Plane.RectangleEdges;
import clampwise.job.Size;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Reads the outline of a plane: a rectangle, or corners in order. */
final class Outlines {

  private final Problems problems;

  Outlines(Problems problems) {
    this.problems = problems;
  }

  Outline of(Named.Item<Plane> plane) {
    if (!plane.value().outline().isEmpty()) {
      return ofCorners(plane.value().outline());
    }
    return plane.value().size().map(size -> rectangle(size, plane.value())).orElse(Outline.NONE);
  }

  private Outline rectangle(Size size, Plane plane) {
    double alongM = size.along().m();
    double upM = size.up().m();
    if (alongM == 0 || upM == 0) {
      problems.add(Problem.of(size.at(), "a plane without area", "two lengths above zero"));
      return Outline.NONE;
    }
    Optional<RectangleEdges> edges = plane.edges();
    Coordinate[] at = {at(0, 0), at(alongM, 0), at(alongM, upM), at(0, upM)};
    return new Outline(
        Optional.of(PlaneAxes.polygon(at)),
        List.of(
            edge(edges.flatMap(RectangleEdges::bottom), EdgeKind.EAVE, size, at[0], at[1]),
            edge(edges.flatMap(RectangleEdges::right), EdgeKind.RAKE, size, at[1], at[2]),
            edge(edges.flatMap(RectangleEdges::top), EdgeKind.RIDGE, size, at[2], at[3]),
            edge(edges.flatMap(RectangleEdges::left), EdgeKind.RAKE, size, at[3], at[0])));
  }

  private static PlaneEdge edge(
      Optional<Choice<EdgeKind>> kind, EdgeKind usual, Size size, Coordinate from, Coordinate to) {
    Span at = kind.map(Choice::at).orElse(size.at());
    return new PlaneEdge(kind.map(Choice::value).orElse(usual), new LineSegment(from, to), at);
  }

  private Outline ofCorners(List<Corner> corners) {
    Span whole = corners.get(0).at().at();
    if (corners.size() < 3) {
      problems.add(
          Problem.of(whole, "an outline of " + corners.size() + " corners", "three or more"));
      return Outline.NONE;
    }
    Optional<Corner> twin = twin(corners);
    if (twin.isPresent()) {
      Span at = twin.get().at().at();
      problems.add(Problem.of(at, "a corner where the one before it lies", "each corner once"));
      return Outline.NONE;
    }
    Coordinate[] points = corners.stream().map(Outlines::point).toArray(Coordinate[]::new);
    Polygon area = PlaneAxes.polygon(points);
    if (!new IsValidOp(area).isValid() || area.getArea() == 0) {
      problems.add(fault(area, corners));
      return Outline.NONE;
    }
    return new Outline(Optional.of(area), edges(corners, isAnticlockwise(area)));
  }

  /** The corner that lies where the one before it does, the last before the first. */
  private static Optional<Corner> twin(List<Corner> corners) {
    Corner before = corners.get(corners.size() - 1);
    for (Corner corner : corners) {
      if (point(corner).equals2D(point(before))) {
        return Optional.of(corner);
      }
      before = corner;
    }
    return Optional.empty();
  }

  private static Problem fault(Polygon area, List<Corner> corners) {
    Coordinate where =
        Optional.ofNullable(new IsValidOp(area).getValidationError())
            .map(error -> error.getCoordinate())
            .orElse(area.getCoordinate());
    Function<Corner, Double> distance = corner -> point(corner).distance(where);
    Corner nearest =
        corners.stream()
            .min((a, b) -> Double.compare(distance.apply(a), distance.apply(b)))
            .orElseThrow();
    return Problem.of(
        nearest.at().at(),
        "an outline that crosses or touches itself near this corner",
        "corners in order round the plane");
  }

  private static boolean isAnticlockwise(Polygon area) {
    return Orientation.isCCW(area.getExteriorRing().getCoordinates());
  }

  private static List<PlaneEdge> edges(List<Corner> corners, boolean anticlockwise) {
    List<PlaneEdge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      LineSegment line = new LineSegment(point(from), point(corners.get((i + 1) % corners.size())));
      if (!anticlockwise) {
        line.reverse();
      }
      edges.add(new PlaneEdge(from.edge().value(), line, from.at().at()));
    }
    if (!anticlockwise) {
      Collections.reverse(edges);
    }
    return List.copyOf(edges);
  }

  private static Coordinate point(Corner corner) {
    return at(corner.at().along().m(), corner.at().up().m());
  }

  private static Coordinate at(double alongM, double upM) {
    return new Coordinate(alongM, upM);
  }
}
