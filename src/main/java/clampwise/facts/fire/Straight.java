package clampwise.facts.fire;

import clampwise.calc.Snap;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

/**
 * The widest straight path from a thing on a plane to an edge where the roof ends: along the eave
 * or down the slope, with the middle of the thing in it.
 */
final class Straight {

  private static final double TOUCH_M = 1e-6;

  private final PlaneLayout plane;
  private final Coordinate middle;
  private final Envelope roof;
  private final double enoughM;

  /** A path in one direction, with the modules that would have to go for its full width. */
  record Path(double widthM, List<PlacedModule> inWay) {}

  private Straight(PlaneLayout plane, Obstacle thing, double enoughM) {
    this.plane = plane;
    this.middle = thing.body().getEnvelopeInternal().centre();
    this.roof = plane.outline().orElseThrow().getEnvelopeInternal();
    this.enoughM = enoughM;
  }

  /** The widest of them, no wider than is asked for; empty where no such edge faces the thing. */
  static Optional<Path> widest(PlaneLayout plane, Obstacle thing, double enoughM) {
    Straight straight = new Straight(plane, thing, enoughM);
    List<Path> paths = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      for (int sign : new int[] {-1, 1}) {
        if (straight.endsRoof(axis, sign)) {
          paths.add(straight.path(axis, sign));
        }
      }
    }
    return paths.stream()
        .max(Comparator.comparingDouble(Path::widthM).thenComparing(path -> -path.inWay().size()));
  }

  /** Whether the first edge that is met in a direction is one where the roof ends. */
  private boolean endsRoof(Axis axis, int sign) {
    double farM = sign * (roof.getWidth() + roof.getHeight());
    Coordinate far =
        axis == Axis.ALONG
            ? new Coordinate(middle.x + farM, middle.y)
            : new Coordinate(middle.x, middle.y + farM);
    LineSegment ray = new LineSegment(middle, far);
    return plane.edges().stream()
        .filter(edge -> ray.intersection(edge.line()) != null)
        .min(Comparator.comparingDouble(edge -> middle.distance(ray.intersection(edge.line()))))
        .filter((PlaneEdge edge) -> Perimeters.endsRoof(edge))
        .isPresent();
  }

  /**
   * The path in a direction: between the nearest modules on both its sides.
   *
   * @param axis direction of the path; its width is measured across
   */
  private Path path(Axis axis, int sign) {
    Axis across = axis == Axis.ALONG ? Axis.UP : Axis.ALONG;
    double atM = across == Axis.ALONG ? middle.x : middle.y;
    List<PlacedModule> ahead =
        Access.modules(plane).stream().filter(module -> isAhead(module, axis, sign)).toList();
    double lowM = across == Axis.ALONG ? roof.getMinX() : roof.getMinY();
    double highM = across == Axis.ALONG ? roof.getMaxX() : roof.getMaxY();
    for (PlacedModule module : ahead) {
      boolean over = across.startM(module) < atM && across.endM(module) > atM;
      lowM = over ? atM : across.endM(module) <= atM ? Math.max(lowM, across.endM(module)) : lowM;
      highM =
          over
              ? atM
              : across.startM(module) >= atM ? Math.min(highM, across.startM(module)) : highM;
    }
    return new Path(Snap.m(Math.min(enoughM, highM - lowM)), inWay(ahead, across, atM));
  }

  private boolean isAhead(PlacedModule module, Axis axis, int sign) {
    double fromM = axis == Axis.ALONG ? middle.x : middle.y;
    return sign < 0 ? axis.startM(module) < fromM : axis.endM(module) > fromM;
  }

  /** Modules in the strip of full width that costs the fewest. */
  private List<PlacedModule> inWay(List<PlacedModule> ahead, Axis across, double atM) {
    return new Clearing(ahead, across, enoughM).fewest(atM - enoughM + TOUCH_M, atM - TOUCH_M);
  }
}
