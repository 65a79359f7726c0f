package clampwise.facts.fire;

import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;

/**
 * Something that nobody walks over.
 *
 * @param box the upright rectangle round it [m]
 * @param shape its outline, where that is no upright rectangle
 */
record Blocker(Envelope box, Optional<Geometry> shape) {

  private static final GeometryFactory SHAPES = new GeometryFactory();

  static Blocker of(PlacedModule module) {
    return new Blocker(box(module), Optional.empty());
  }

  static Blocker of(Obstacle obstacle) {
    return new Blocker(
        obstacle.body().getEnvelopeInternal(),
        Optional.<Geometry>of(obstacle.body()).filter(body -> !body.isRectangle()));
  }

  static Envelope box(PlacedModule module) {
    return new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM());
  }

  double distanceM(Blocker other) {
    return shape.isEmpty() && other.shape.isEmpty()
        ? box.distance(other.box)
        : area().distance(other.area());
  }

  /** Distance from an edge of the roof, as far as it is less than a reach. */
  double distanceM(LineSegment edge, double reachM) {
    double leastM = new Envelope(edge.p0, edge.p1).distance(box);
    boolean upright = edge.isHorizontal() || edge.isVertical();
    return leastM >= reachM || (upright && shape.isEmpty())
        ? leastM
        : edge.toGeometry(SHAPES).distance(area());
  }

  private Geometry area() {
    return shape.orElseGet(() -> SHAPES.toGeometry(box));
  }
}
