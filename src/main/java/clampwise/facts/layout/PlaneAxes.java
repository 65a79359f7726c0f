package clampwise.facts.layout;

import clampwise.calc.Snap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Shapes in the axes of a roof plane: x along the eave, y up the slope [m]. */
final class PlaneAxes {

  private static final GeometryFactory SHAPES = new GeometryFactory();

  private PlaneAxes() {}

  static GeometryFactory shapes() {
    return SHAPES;
  }

  static Polygon rectangle(double leftM, double bottomM, double rightM, double topM) {
    return (Polygon) SHAPES.toGeometry(new Envelope(leftM, rightM, bottomM, topM));
  }

  /** A polygon from its corners, the first not repeated. */
  static Polygon polygon(Coordinate... corners) {
    Coordinate[] ring = java.util.Arrays.copyOf(corners, corners.length + 1);
    ring[corners.length] = corners[0].copy();
    return SHAPES.createPolygon(ring);
  }

  /** The shape with all distances up the slope multiplied by a factor. */
  static Geometry stretchedUp(Geometry shape, double factor) {
    return AffineTransformation.scaleInstance(1, factor).transform(shape);
  }

  /** Rounds the corners of a shape, whose rounding noise would make rectangles look otherwise. */
  static Geometry snapped(Geometry shape) {
    shape.apply((Coordinate corner) -> corner.setCoordinate(snapped(corner)));
    shape.geometryChanged();
    return shape;
  }

  /** A corner without the rounding noise of sums. */
  static Coordinate snapped(Coordinate corner) {
    return new Coordinate(Snap.m(corner.x), Snap.m(corner.y));
  }
}
