package clampwise.facts.layout;

import static clampwise.facts.layout.PlanDrawing.both;
import static clampwise.facts.layout.PlanDrawing.either;
import static clampwise.job.Plane.EdgeKind.EAVE;
import static clampwise.job.Plane.EdgeKind.HIP;
import static clampwise.job.Plane.EdgeKind.RAKE;
import static clampwise.job.Plane.EdgeKind.RIDGE;

import clampwise.calc.ZoneWidth.Widths;
import clampwise.job.Plane.EdgeKind;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;

/**
 * The zone figures of ASCE 7-16 and 7-22 for roofs of h up to 60 ft, each as layers: what comes
 * first lies over what comes later. Zone widths and shapes second-hand, hip roofs from memory.
 */
final class ZoneFigures {

  private final PlanDrawing plan;
  private final double aM;

  ZoneFigures(PlanDrawing plan, double aM) {
    this.plan = plan;
    this.aM = aM;
  }

  /**
   * Figure 30.3-2A: band of 0.6 h, corners as an L with legs 0.6 h long and 0.2 h wide, inner band
   * to 1.2 h.
   *
   * @param perimeter kinds of edges that are edges of the building
   */
  static List<ZoneLayer> lowSlope(PlanDrawing plan, Set<EdgeKind> perimeter, Widths widths) {
    double bandM = widths.edgeM();
    return List.of(
        new ZoneLayer("3", 4, plan.corners(perimeter, bandM, widths.cornerM())),
        new ZoneLayer("2", 3, plan.strips(perimeter, bandM)),
        new ZoneLayer("1", 2, plan.strips(perimeter, 2 * bandM)),
        new ZoneLayer("1'", 1, plan.area()));
  }

  /**
   * Gable roofs of ASCE 7-16, figures 30.3-2B to 2D.
   *
   * @param steep above 27 degrees, where the eave corner is the most severe
   */
  List<ZoneLayer> gable16(boolean steep) {
    Geometry eave = plan.strips(EAVE, aM);
    Geometry rake = plan.strips(RAKE, aM);
    Geometry ridge = plan.strips(RIDGE, aM);
    return List.of(
        new ZoneLayer("3r", steep ? 5 : 6, both(ridge, rake)),
        new ZoneLayer("3e", steep ? 6 : 5, both(eave, rake)),
        new ZoneLayer("2n", 4, rake),
        new ZoneLayer("2r", 3, ridge),
        new ZoneLayer("2e", 2, eave),
        new ZoneLayer("1", 1, plan.area()));
  }

  /** Gable roofs of ASCE 7-22 up to 27 degrees, figures 30.3-2B and 2C. */
  List<ZoneLayer> gable22() {
    Geometry rake = plan.strips(RAKE, aM);
    Geometry ridge = plan.strips(RIDGE, aM);
    return three(both(ridge, rake), either(ridge, rake));
  }

  /**
   * Gable roofs of ASCE 7-22 above 27 degrees, figure 30.3-2D; taken to have its corners at both
   * ends of the rake.
   */
  List<ZoneLayer> steepGable22() {
    Geometry rake = plan.strips(RAKE, aM);
    Geometry ends = plan.strips(Set.of(EAVE, RIDGE), aM);
    return three(both(ends, rake), rake);
  }

  /** Hip roofs of ASCE 7-16, figures 30.3-2E to 2I; from memory. */
  List<ZoneLayer> hip16() {
    Geometry eave = plan.strips(EAVE, aM);
    Geometry hip = plan.strips(HIP, aM);
    return List.of(
        new ZoneLayer("3", 4, both(eave, hip)),
        new ZoneLayer("2r", 3, plan.strips(Set.of(HIP, RIDGE), aM)),
        new ZoneLayer("2e", 2, eave),
        new ZoneLayer("1", 1, plan.area()));
  }

  /** Hip roofs of ASCE 7-22, figures 30.3-2E to 2G; from memory. */
  List<ZoneLayer> hip22() {
    Geometry corners = both(plan.strips(EAVE, aM), plan.strips(HIP, aM));
    return three(corners, plan.strips(Set.of(EAVE, HIP, RIDGE), aM));
  }

  /**
   * Monoslope roofs of 3 to 10 degrees, figure 30.3-5A: at the high edge strips of 2 a and corners
   * of 4 a along it by 2 a, at the low corners 2 a by 2 a. The high edge is the one of kind ridge.
   */
  List<ZoneLayer> monoslope() {
    Geometry high = plan.strips(RIDGE, 2 * aM);
    Geometry lowCorners = both(plan.strips(EAVE, 2 * aM), plan.strips(RAKE, 2 * aM));
    return List.of(
        new ZoneLayer("3'", 5, both(high, plan.strips(RAKE, 4 * aM))),
        new ZoneLayer("2'", 4, high),
        new ZoneLayer("3", 3, lowCorners),
        new ZoneLayer("2", 2, plan.strips(Set.of(EAVE, RAKE), aM)),
        new ZoneLayer("1", 1, plan.area()));
  }

  private List<ZoneLayer> three(Geometry corners, Geometry edges) {
    return List.of(
        new ZoneLayer("3", 3, corners),
        new ZoneLayer("2", 2, edges),
        new ZoneLayer("1", 1, plan.area()));
  }
}
