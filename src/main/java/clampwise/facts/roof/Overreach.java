package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Finds by how much modules reach over the outline of a plane, and over which edge. */
final class Overreach {

  private final GeometryFactory shapes = new GeometryFactory();
  private final PlaneLayout plane;
  private final Polygon outline;
  private final PreparedGeometry prepared;

  /**
   * The part of a module that lies outside its plane.
   *
   * @param depthM distance of its farthest corner from the plane [m]
   */
  record Over(PlaneEdge edge, double depthM) {}

  Overreach(PlaneLayout plane, Polygon outline) {
    this.plane = plane;
    this.outline = outline;
    this.prepared = PreparedGeometryFactory.prepare(outline);
  }

  /** How far a module reaches over its plane; empty if it lies inside. */
  Optional<Over> of(PlacedModule module) {
    Geometry body = shapes.toGeometry(box(module));
    if (prepared.covers(body)) {
      return Optional.empty();
    }
    Geometry outside = body.difference(outline);
    return Arrays.stream(outside.getCoordinates())
        .max(Comparator.comparingDouble(this::depthM))
        .filter(corner -> depthM(corner) > 0)
        .map(corner -> new Over(nearest(corner), depthM(corner)));
  }

  private double depthM(Coordinate corner) {
    return Snap.m(outline.distance(shapes.createPoint(corner)));
  }

  private PlaneEdge nearest(Coordinate corner) {
    return plane.edges().stream()
        .min(Comparator.comparingDouble(edge -> edge.line().distance(corner)))
        .orElseThrow();
  }

  private static Envelope box(PlacedModule module) {
    return new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM());
  }
}
