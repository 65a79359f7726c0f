package clampwise.plan;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.GeometryFixer;

/** Parallel lines across an area; drawn as lines, so that every reader shows them alike. */
final class Hatching {

  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final int MOST_LINES = 2000;

  private Hatching() {}

  /**
   * Lines at half a right angle.
   *
   * @param apartM distance between lines [m]
   * @param rising whether they rise to the right
   */
  static Geometry of(Geometry area, double apartM, boolean rising) {
    Envelope box = area.getEnvelopeInternal();
    double lowM = box.getMinY();
    double highM = box.getMaxY();
    double least = rising ? box.getMinX() - highM : box.getMinX() + lowM;
    double most = rising ? box.getMaxX() - lowM : box.getMaxX() + highM;
    double step = Math.max(apartM * Math.sqrt(2), (most - least) / MOST_LINES);
    double side = rising ? 1 : -1;
    List<LineString> lines = new ArrayList<>();
    // All lines count from one origin, so that those of neighbouring areas meet.
    for (double at = Math.ceil(least / step) * step; at < most; at += step) {
      lines.add(line(at + side * lowM, lowM, at + side * highM, highM));
    }
    Geometry all = SHAPES.createMultiLineString(lines.toArray(LineString[]::new));
    return all.intersection(GeometryFixer.fix(area));
  }

  private static LineString line(double fromX, double fromY, double toX, double toY) {
    Coordinate from = new Coordinate(fromX, fromY);
    return SHAPES.createLineString(new Coordinate[] {from, new Coordinate(toX, toY)});
  }
}
