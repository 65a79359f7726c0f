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

  private final LineWord word;

  private SeamLines(LineWord word) {
    this.word = word;
  }

  /** The pieces of all seams, left to right, then upwards; endless where there is no outline. */
  static List<SeamLine> clipped(LineWord word, List<SeamRow.Place> places, Outline outline) {
    SeamLines lines = new SeamLines(word);
    return places.stream().flatMap(place -> lines.pieces(place, outline)).toList();
  }

  private Stream<SeamLine> pieces(SeamRow.Place place, Outline outline) {
    return outline
        .area()
        .map(area -> cut(place, area))
        .orElseGet(
            () -> Stream.of(piece(place, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)));
  }

  private Stream<SeamLine> cut(SeamRow.Place place, Polygon area) {
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

  private SeamLine piece(SeamRow.Place place, double fromUpM, double toUpM) {
    return new SeamLine(
        word,
        place.number(),
        place.alongM(),
        place.nominalM(),
        Snap.m(fromUpM),
        Snap.m(toUpM),
        place.surveyed(),
        place.at());
  }
}
