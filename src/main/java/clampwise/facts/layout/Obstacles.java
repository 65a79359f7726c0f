package clampwise.facts.layout;

import clampwise.job.Named;
import clampwise.job.Obstruction;
import clampwise.job.Quantity.Length;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Draws obstructions with the area to keep clear round them. */
final class Obstacles {

  /** 16 chords a quarter keep a circle within 0.5 % of its radius. */
  private static final int CHORDS_A_QUARTER = 16;

  private final Problems problems;
  private final Outline outline;

  Obstacles(Problems problems, Outline outline) {
    this.problems = problems;
    this.outline = outline;
  }

  List<Obstacle> of(Named<Obstruction> obstructions) {
    return obstructions.all().stream().flatMap(item -> obstacle(item).stream()).toList();
  }

  private Optional<Obstacle> obstacle(Named.Item<Obstruction> item) {
    Obstruction obstruction = item.value();
    double clearM = obstruction.clearance().map(Length::m).orElse(0.0);
    Optional<Polygon> body = body(obstruction, 0);
    if (body.filter(shape -> shape.getArea() > 0).isEmpty()) {
      problems.add(
          Problem.of(item.name().at(), "an obstruction without extent", "a size or a diameter"));
      return Optional.empty();
    }
    body.filter(this::isOffThePlane)
        .ifPresent(
            shape ->
                problems.add(
                    Problem.of(
                        obstruction.at().at(),
                        "an obstruction off its plane",
                        "a place on the plane, from the left end of its eave")));
    return body(obstruction, clearM)
        .map(
            keepClear ->
                new Obstacle(
                    item.name().value(),
                    obstruction,
                    body.orElseThrow(),
                    keepClear,
                    item.name().at()));
  }

  private boolean isOffThePlane(Polygon body) {
    return outline.area().filter(area -> !area.intersects(body)).isPresent();
  }

  private static Optional<Polygon> body(Obstruction obstruction, double growM) {
    if (obstruction.size().isPresent()) {
      return Optional.of(rectangle(obstruction, growM));
    }
    return obstruction.diameter().map(diameter -> circle(obstruction, diameter.m() / 2 + growM));
  }

  private static Polygon rectangle(Obstruction obstruction, double growM) {
    double leftM = obstruction.at().along().m();
    double bottomM = obstruction.at().up().m();
    Envelope box =
        new Envelope(
            leftM,
            leftM + obstruction.size().orElseThrow().along().m(),
            bottomM,
            bottomM + obstruction.size().orElseThrow().up().m());
    box.expandBy(growM);
    return PlaneAxes.rectangle(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  private static Polygon circle(Obstruction obstruction, double radiusM) {
    Coordinate centre = new Coordinate(obstruction.at().along().m(), obstruction.at().up().m());
    return (Polygon) PlaneAxes.shapes().createPoint(centre).buffer(radiusM, CHORDS_A_QUARTER);
  }
}
