package clampwise.plan;

import clampwise.plan.Drawn.Run;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Where a roof plane lies on a sheet: its axes run right along the eave and up the slope, those of
 * the sheet right and down.
 *
 * @param view what is shown of the plane [m]
 * @param corner where the upper left corner of the view lies
 */
record Frame(Envelope view, Point corner, DrawingScale scale) {

  Point at(double alongM, double upM) {
    return new Point(
        corner.xMm() + mm(alongM - view.getMinX()), corner.yMm() + mm(view.getMaxY() - upM));
  }

  Point at(Coordinate place) {
    return at(place.x, place.y);
  }

  /** A length of the roof on the sheet [mm]. */
  double mm(double lengthM) {
    return lengthM * scale.mmPerM();
  }

  /** A length of the sheet on the roof [m]. */
  double metres(double lengthMm) {
    return lengthMm / scale.mmPerM();
  }

  Point opposite() {
    return at(view.getMaxX(), view.getMinY());
  }

  /** The runs of a shape; rings are closed. */
  List<Run> runs(Geometry shape) {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      Geometry part = shape.getGeometryN(i);
      if (part instanceof Polygon polygon && !polygon.isEmpty()) {
        runs.add(ring(polygon.getExteriorRing()));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          runs.add(ring(polygon.getInteriorRingN(hole)));
        }
      } else if (part instanceof LineString line && !line.isEmpty()) {
        runs.add(new Run(points(line.getCoordinates(), line.getNumPoints()), false));
      }
    }
    return runs;
  }

  private Run ring(LineString ring) {
    return new Run(points(ring.getCoordinates(), ring.getNumPoints() - 1), true);
  }

  private List<Point> points(Coordinate[] places, int count) {
    List<Point> points = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      points.add(at(places[i]));
    }
    return points;
  }
}
