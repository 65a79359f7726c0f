package clampwise.facts.loads;

import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Building.RoofShape;
import clampwise.job.Plane.EdgeKind;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.LineSegment;

/** Measures how far the roof goes on beyond a side of a module. */
final class RoofReach {

  private static final double TOUCH_M = 1e-9;

  private final PlaneLayout plane;
  private final Set<EdgeKind> ends;

  RoofReach(PlaneLayout plane, Optional<RoofShape> shape) {
    this.plane = plane;
    boolean oneSided =
        shape.filter(s -> s == RoofShape.MONOSLOPE || s == RoofShape.FLAT).isPresent();
    this.ends =
        oneSided
            ? EnumSet.of(EdgeKind.EAVE, EdgeKind.RAKE, EdgeKind.RIDGE)
            : EnumSet.of(EdgeKind.EAVE, EdgeKind.RAKE);
  }

  /**
   * Distance to the edge of the roof, square to the side; the longest of its corners and its
   * middle, because a far edge is the severe case. Infinite where the roof goes on in another plane
   * or ends at a wall.
   */
  double edgeM(PlacedModule module, Side side) {
    boolean level = side == Side.LEFT || side == Side.RIGHT;
    double fromM = level ? module.bottomM() : module.leftM();
    double toM = level ? module.topM() : module.rightM();
    double startM =
        switch (side) {
          case LEFT -> module.leftM();
          case RIGHT -> module.rightM();
          case BELOW -> module.bottomM();
          case ABOVE -> module.topM();
        };
    double sign = side == Side.LEFT || side == Side.BELOW ? -1 : 1;
    double most = 0;
    for (double atM : new double[] {fromM, (fromM + toM) / 2, toM}) {
      most = Math.max(most, edgeM(level, atM, startM, sign));
    }
    return most;
  }

  private double edgeM(boolean level, double atM, double startM, double sign) {
    double leastM = Double.POSITIVE_INFINITY;
    boolean ends = false;
    for (PlaneEdge edge : plane.edges()) {
      double distanceM = distanceM(edge.line(), level, atM, startM, sign);
      if (distanceM >= -TOUCH_M && distanceM < leastM) {
        leastM = distanceM;
        ends = this.ends.contains(edge.kind());
      }
    }
    return ends ? Math.max(0, leastM) : Double.POSITIVE_INFINITY;
  }

  /** Where a ray meets an edge; never, if it runs beside it. */
  private static double distanceM(
      LineSegment line, boolean level, double atM, double startM, double sign) {
    double a0 = level ? line.p0.y : line.p0.x;
    double a1 = level ? line.p1.y : line.p1.x;
    double b0 = level ? line.p0.x : line.p0.y;
    double b1 = level ? line.p1.x : line.p1.y;
    if (a0 == a1 || atM < Math.min(a0, a1) || atM > Math.max(a0, a1)) {
      return Double.NaN;
    }
    return sign * (b0 + (b1 - b0) * (atM - a0) / (a1 - a0) - startM);
  }
}
