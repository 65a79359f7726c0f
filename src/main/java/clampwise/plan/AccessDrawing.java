package clampwise.plan;

import clampwise.facts.Fact;
import clampwise.facts.fire.HipSetback;
import clampwise.facts.fire.PerimeterPath;
import clampwise.facts.fire.PlanePathways;
import clampwise.facts.fire.RidgeSetback;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Plane.EdgeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Ways and setbacks for the fire service. */
final class AccessDrawing {

  private static final int MOST_MODULES = 5000;
  private static final int CORNER_STEPS = 8;

  private final PlaneLayout plane;
  private final List<Fact> facts;
  private final Frame frame;
  private final Canvas canvas;

  AccessDrawing(PlaneLayout plane, List<Fact> facts, Frame frame, Canvas canvas) {
    this.plane = plane;
    this.facts = facts;
    this.frame = frame;
    this.canvas = canvas;
  }

  void draw() {
    canvas.layer("access");
    pathWidthM().ifPresent(widthM -> plane.outline().ifPresent(all -> clear(all, widthM)));
    for (Fact fact : facts) {
      if (fact instanceof RidgeSetback ridge && ridge.plane().equals(plane.name())) {
        setback(Set.of(EdgeKind.RIDGE), ridge.leastM());
      } else if (fact instanceof HipSetback hip && hip.plane().equals(plane.name())) {
        setback(Set.of(EdgeKind.HIP, EdgeKind.VALLEY), hip.leastM());
      } else if (fact instanceof PerimeterPath path && path.plane().equals(plane.name())) {
        setback(path);
      }
    }
  }

  private OptionalDouble pathWidthM() {
    return facts.stream()
        .filter(PlanePathways.class::isInstance)
        .map(PlanePathways.class::cast)
        .filter(fact -> fact.plane().equals(plane.name()))
        .mapToDouble(PlanePathways::widthM)
        .findFirst();
  }

  /** The part of the free roof that a strip of this width can sweep. */
  private void clear(Polygon outline, double widthM) {
    List<Geometry> taken = new ArrayList<>();
    for (FieldLayout field : plane.fields()) {
      for (PlacedModule module : field.modules()) {
        taken.add(Spots.SHAPES.toGeometry(Spots.box(module)));
      }
    }
    if (taken.size() > MOST_MODULES) {
      return;
    }
    plane.obstacles().stream().map(Obstacle::body).forEach(taken::add);
    Geometry[] all = taken.toArray(Geometry[]::new);
    Geometry free = outline.difference(new GeometryCollection(all, Spots.SHAPES).union());
    int square = BufferParameters.CAP_SQUARE;
    Geometry middles = free.buffer(-widthM / 2, CORNER_STEPS, square);
    canvas.shape(Style.CLEAR_PATH, middles.buffer(widthM / 2, CORNER_STEPS, square), frame);
  }

  private void setback(Set<EdgeKind> kinds, double leastM) {
    plane.edges().stream()
        .filter(edge -> kinds.contains(edge.kind()))
        .forEach(edge -> setback(edge.line(), leastM));
  }

  private void setback(PerimeterPath path) {
    plane.edges().stream()
        .filter(edge -> path.edge().contains(word(edge)))
        .forEach(edge -> setback(edge.line(), path.leastM()));
  }

  private static String word(PlaneEdge edge) {
    return Style.valueOf(edge.kind().name()).meaning();
  }

  /** A line inside of an edge; outlines run anticlockwise, so inside is left. */
  private void setback(LineSegment edge, double leastM) {
    if (leastM > 0) {
      LineSegment line = edge.offset(leastM);
      canvas.line(Style.SETBACK, frame.at(line.p0), frame.at(line.p1));
    }
  }
}
