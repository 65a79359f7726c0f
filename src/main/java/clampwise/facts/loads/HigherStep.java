package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.job.Loads;
import clampwise.job.Loads.HigherRoof;
import clampwise.job.Plane.EdgeKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * The step up to a higher roof: the edges of kind wall of the plane that it stands beside. All
 * distances are in plan.
 *
 * @param roof the higher roof, as written
 * @param walls its walls in plan
 * @param planPerSlope cosine of the plane's slope [-]
 * @param lowerM length of this roof away from the step [m]
 */
record HigherStep(HigherRoof roof, List<LineSegment> walls, double planPerSlope, double lowerM) {

  /** The step beside the plane of a field; nothing where no higher roof is written for it. */
  static Outcome<Optional<HigherStep>> of(FieldSite asked) {
    Optional<HigherRoof> written =
        asked
            .snow(Loads.Snow::higherRoof)
            .filter(roof -> roof.beside().value().equals(asked.plane().name()));
    if (written.isEmpty()) {
      return new Result<>(Optional.empty());
    }
    if (asked.slopeRad().isEmpty() || asked.plane().outline().isEmpty()) {
      return new NotApplicable<>("where the step to the higher roof lies is not known");
    }
    HigherStep step = at(asked, written.get());
    return step.walls.isEmpty()
        ? new NotApplicable<>(
            "no edge of plane " + asked.plane().name() + " is a wall, where the higher roof begins")
        : new Result<>(Optional.of(step));
  }

  private static HigherStep at(FieldSite asked, HigherRoof roof) {
    double planPerSlope = Math.cos(asked.slopeRad().orElseThrow());
    List<LineSegment> walls =
        asked.plane().edges().stream()
            .filter(edge -> edge.kind() == EdgeKind.WALL)
            .map(PlaneEdge::line)
            .map(line -> new LineSegment(plan(line.p0, planPerSlope), plan(line.p1, planPerSlope)))
            .toList();
    double lowerM =
        Arrays.stream(asked.plane().outline().orElseThrow().getCoordinates())
            .map(corner -> plan(corner, planPerSlope))
            .flatMapToDouble(
                corner -> walls.stream().mapToDouble(wall -> wall.distancePerpendicular(corner)))
            .max()
            .orElse(0);
    return new HigherStep(roof, walls, planPerSlope, Snap.m(lowerM));
  }

  /** Plan distance from the nearest wall to the nearest corner or side of a module [m]. */
  double fromM(PlacedModule module) {
    Coordinate low = plan(new Coordinate(module.leftM(), module.bottomM()), planPerSlope);
    Coordinate high = plan(new Coordinate(module.rightM(), module.topM()), planPerSlope);
    Coordinate left = new Coordinate(low.x, high.y);
    Coordinate right = new Coordinate(high.x, low.y);
    List<LineSegment> sides =
        List.of(
            new LineSegment(low, right),
            new LineSegment(right, high),
            new LineSegment(high, left),
            new LineSegment(left, low));
    return Snap.m(
        walls.stream()
            .flatMapToDouble(
                wall -> DoubleStream.of(sides.stream().mapToDouble(wall::distance).min().orElse(0)))
            .min()
            .orElse(0));
  }

  private static Coordinate plan(Coordinate onSlope, double planPerSlope) {
    return new Coordinate(onSlope.x, onSlope.y * planPerSlope);
  }
}
