package clampwise.facts.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Finds the wind zones of points and modules on one plane. */
public final class ZoneLookup {

  /** A module that only touches a zone does not lie in it; a point this near to it does. */
  private static final double TOUCH_M = 1e-6;

  private record Piece(ZoneArea zone, Envelope box, boolean rectangle, PreparedGeometry shape) {

    boolean holds(Coordinate point) {
      return box.getMinX() - TOUCH_M <= point.x
          && point.x <= box.getMaxX() + TOUCH_M
          && box.getMinY() - TOUCH_M <= point.y
          && point.y <= box.getMaxY() + TOUCH_M
          && (rectangle || shape.covers(PlaneAxes.shapes().createPoint(point)));
    }

    boolean meets(Envelope module) {
      return box.intersects(module)
          && (rectangle || shape.intersects(PlaneAxes.shapes().toGeometry(module)));
    }
  }

  private final List<Piece> pieces = new ArrayList<>();

  /** A lookup of zones. */
  public ZoneLookup(List<ZoneArea> zones) {
    zones.stream().sorted(ZoneArea.WORST_FIRST).forEach(this::addPieces);
  }

  private void addPieces(ZoneArea zone) {
    for (int i = 0; i < zone.area().getNumGeometries(); i++) {
      Geometry shape = zone.area().getGeometryN(i);
      Envelope box = shape.getEnvelopeInternal();
      PreparedGeometry prepared = PreparedGeometryFactory.prepare(shape);
      pieces.add(new Piece(zone, box, shape.isRectangle(), prepared));
    }
  }

  /** The zone at a point, the more severe one on a border. */
  public Optional<ZoneArea> at(double alongM, double upM) {
    Coordinate point = new Coordinate(alongM, upM);
    for (Piece piece : pieces) {
      if (piece.holds(point)) {
        return Optional.of(piece.zone);
      }
    }
    return Optional.empty();
  }

  /** All zones a module lies in, the most severe first. */
  public List<ZoneArea> of(PlacedModule module) {
    Envelope box = new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM());
    box.expandBy(-TOUCH_M);
    return pieces.stream().filter(piece -> piece.meets(box)).map(Piece::zone).distinct().toList();
  }
}
