package clampwise.facts.fire;

import clampwise.calc.Snap;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Fire.Adjacent;
import clampwise.job.Plane.EdgeKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the planes that meet a plane, and pathways on or across their common edges. */
final class Neighbours {

  private static final double TOUCH_M = 1e-6;

  /** Lengths of an edge as measured on its two planes. */
  private static final double SAME_EDGE_M = 0.01;

  private final Access access;
  private final List<PlaneLayout> planes;

  Neighbours(Access access) {
    this.access = access;
    this.planes = access.layout().planes();
  }

  /** Whether planes that meet a plane are not named and do not follow from the roof. */
  boolean areUnknown(PlaneLayout plane) {
    return access.isLost("adjacent")
        || (access.fire().adjacent().isEmpty() && of(plane).isEmpty())
        || of(plane).stream().anyMatch(other -> other.outline().isEmpty());
  }

  /** The planes that meet a plane; two planes with a ridge and nothing else meet there. */
  private List<PlaneLayout> of(PlaneLayout plane) {
    if (!access.fire().adjacent().isEmpty()) {
      return planes.stream().filter(other -> isNamed(plane, other)).toList();
    }
    boolean gable = planes.size() == 2 && planes.stream().allMatch(p -> has(p, EdgeKind.RIDGE));
    return gable
        ? planes.stream().filter(other -> !other.name().equals(plane.name())).toList()
        : List.of();
  }

  private boolean isNamed(PlaneLayout plane, PlaneLayout other) {
    return access.fire().adjacent().stream()
        .anyMatch(pair -> is(pair, plane, other) || is(pair, other, plane));
  }

  private static boolean is(Adjacent pair, PlaneLayout one, PlaneLayout other) {
    return pair.plane().value().equals(one.name()) && pair.to().value().equals(other.name());
  }

  private static boolean has(PlaneLayout plane, EdgeKind kind) {
    return plane.edges().stream().anyMatch(edge -> edge.kind() == kind);
  }

  /** Whether a plane beside another has a pathway, or the two have one across their edge. */
  boolean serve(PlaneLayout plane, double widthM, PathwayCount count) {
    return of(plane).stream()
        .anyMatch(other -> count.isWalkable(other) || straddles(plane, other, widthM));
  }

  /** The plane on the other side of a hip or valley, where the job and its shape tell. */
  Optional<PlaneLayout> across(PlaneLayout plane, PlaneEdge edge) {
    return of(plane).stream()
        .filter(other -> slanted(other).anyMatch(far -> isSame(plane, edge, other, far)))
        .findFirst();
  }

  /** A pathway along a common hip or valley, part of it on either plane. */
  private static boolean straddles(PlaneLayout plane, PlaneLayout other, double widthM) {
    return slanted(plane)
        .anyMatch(
            edge ->
                slanted(other)
                    .filter(far -> isSame(plane, edge, other, far))
                    .anyMatch(far -> freeM(plane, edge) + freeM(other, far) + TOUCH_M >= widthM));
  }

  static Stream<PlaneEdge> slanted(PlaneLayout plane) {
    return plane.edges().stream()
        .filter(edge -> edge.kind() == EdgeKind.HIP || edge.kind() == EdgeKind.VALLEY);
  }

  /**
   * Whether edges of two planes are one in the roof: of one kind and length, and left of the one
   * plane where they are right of the other, as their azimuths tell.
   */
  private static boolean isSame(
      PlaneLayout plane, PlaneEdge edge, PlaneLayout other, PlaneEdge far) {
    double differenceM = Math.abs(edge.line().getLength() - far.line().getLength());
    return plane.plane().azimuth().isPresent()
        && other.plane().azimuth().isPresent()
        && edge.kind() == far.kind()
        && differenceM <= SAME_EDGE_M
        && isLeft(edge) != isLeft(far)
        && (isToTheLeft(plane, other) == isLeft(edge)) == (edge.kind() == EdgeKind.HIP);
  }

  /** The outline runs anticlockwise: edges at the left go down. */
  private static boolean isLeft(PlaneEdge edge) {
    return edge.line().p1.y < edge.line().p0.y;
  }

  /** Whether a plane beside another faces the left of who looks up that other's slope. */
  private static boolean isToTheLeft(PlaneLayout plane, PlaneLayout other) {
    double otherRad = other.plane().azimuth().orElseThrow().rad();
    return Math.sin(otherRad - plane.plane().azimuth().orElseThrow().rad()) > 0;
  }

  private static double freeM(PlaneLayout plane, PlaneEdge edge) {
    return Snap.m(
        Access.modules(plane).stream()
            .map(Blocker::of)
            .mapToDouble(module -> module.distanceM(edge.line(), Double.POSITIVE_INFINITY))
            .min()
            .orElse(Double.POSITIVE_INFINITY));
  }
}
