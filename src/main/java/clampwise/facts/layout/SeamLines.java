package clampwise.facts.layout;

import clampwise.calc.Snap;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Cuts seams to the outline of their plane; one that it interrupts becomes several pieces. */
final class SeamLines {

  private SeamLines() {}

  /** The pieces of all seams, left to right, then upwards; endless where there is no outline. */
  static List<SeamLine> clipped(List<SeamRow.Place> places, Outline outline) {
    return places.stream().flatMap(place -> pieces(place, outline)).toList();
  }

  private static Stream<SeamLine> pieces(SeamRow.Place place, Outline outline) {
    return outline
        .area()
        .map(area -> cut(place, area))
        .orElseGet(
            () -> Stream.of(piece(place, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)));
  }

  private static Stream<SeamLine> cut(SeamRow.Place place, Polygon area) {
    Envelope box = area.getEnvelopeInternal();
    if (place.alongM() < box.getMinX() || place.alongM() > box.getMaxX()) {
      return Stream.empty();
    }
    if (area.isRectangle()) {
      return Stream.of(piece(place, box.getMinY(), box.getMaxY()));
    }
    Geometry inside = area.intersection(line(place.alongM(), box));
    return IntStream.range(0, inside.getNumGeometries())
        .mapToObj(inside::getGeometryN)
        .filter(LineString.class::isInstance)
        .map(Geometry::getEnvelopeInternal)
        .sorted((a, b) -> Double.compare(a.getMinY(), b.getMinY()))
        .map(span -> piece(place, span.getMinY(), span.getMaxY()));
  }

  private static LineString line(double alongM, Envelope box) {
    return PlaneAxes.shapes()
        .createLineString(
            new Coordinate[] {
              new Coordinate(alongM, box.getMinY() - 1), new Coordinate(alongM, box.getMaxY() + 1)
            });
  }

  private static SeamLine piece(SeamRow.Place place, double fromUpM, double toUpM) {
    return new SeamLine(
        place.number(),
        place.alongM(),
        place.nominalM(),
        Snap.m(fromUpM),
        Snap.m(toUpM),
        place.surveyed(),
        place.at());
  }
}
