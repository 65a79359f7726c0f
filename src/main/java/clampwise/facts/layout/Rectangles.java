package clampwise.facts.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Areas made of upright rectangles, as the zones of nearly every plane are: cut by comparing sides,
 * which is exact and a hundred times cheaper than a general overlay.
 */
record Rectangles(List<Envelope> parts) {

  /** The rectangles of an area, if it consists of nothing else. */
  static Optional<Rectangles> of(Geometry area) {
    List<Envelope> parts = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      Geometry part = area.getGeometryN(i);
      if (!part.isEmpty() && !part.isRectangle()) {
        return Optional.empty();
      }
      if (!part.isEmpty()) {
        parts.add(part.getEnvelopeInternal());
      }
    }
    return Optional.of(new Rectangles(parts));
  }

  Rectangles both(Rectangles other) {
    List<Envelope> common = new ArrayList<>();
    for (Envelope part : parts) {
      for (Envelope cut : other.parts) {
        add(common, part.intersection(cut));
      }
    }
    return new Rectangles(common);
  }

  Rectangles without(Rectangles other) {
    List<Envelope> rest = parts;
    for (Envelope cut : other.parts) {
      List<Envelope> left = new ArrayList<>();
      rest.forEach(part -> addRest(left, part, cut));
      rest = left;
    }
    return new Rectangles(rest);
  }

  Rectangles and(Rectangles other) {
    List<Envelope> all = new ArrayList<>(parts);
    all.addAll(other.parts);
    return new Rectangles(all);
  }

  /** The area, unless parts touch or overlap, so that their union has another shape. */
  Optional<Geometry> apart() {
    for (int i = 0; i < parts.size(); i++) {
      for (Envelope other : parts.subList(i + 1, parts.size())) {
        if (parts.get(i).intersects(other)) {
          return Optional.empty();
        }
      }
    }
    Polygon[] polygons = new Polygon[parts.size()];
    for (int i = 0; i < polygons.length; i++) {
      polygons[i] = (Polygon) PlaneAxes.shapes().toGeometry(parts.get(i));
    }
    return Optional.of(
        switch (polygons.length) {
          case 0 -> PlaneAxes.shapes().createPolygon();
          case 1 -> polygons[0];
          default -> PlaneAxes.shapes().createMultiPolygon(polygons);
        });
  }

  /** What is left of a rectangle beside another: full-height pieces at the sides, then the rest. */
  private static void addRest(List<Envelope> rest, Envelope part, Envelope cut) {
    Envelope common = part.intersection(cut);
    if (common.getArea() <= 0) {
      rest.add(part);
      return;
    }
    double low = part.getMinY();
    double high = part.getMaxY();
    add(rest, new Envelope(part.getMinX(), common.getMinX(), low, high));
    add(rest, new Envelope(common.getMaxX(), part.getMaxX(), low, high));
    add(rest, new Envelope(common.getMinX(), common.getMaxX(), low, common.getMinY()));
    add(rest, new Envelope(common.getMinX(), common.getMaxX(), common.getMaxY(), high));
  }

  private static void add(List<Envelope> parts, Envelope part) {
    if (part.getArea() > 0) {
      parts.add(part);
    }
  }
}
