package clampwise.facts.fire;

import clampwise.calc.Snap;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Fire.EscapeOpening;
import clampwise.job.Plane.EdgeKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

/**
 * A way over a plane from one run of its edges to another, with the edges at both its sides.
 *
 * @param from edges where it starts
 * @param to edges where it ends
 * @param left the edges from its end round to its start
 * @param right the edges from its start round to its end
 */
record Way(
    List<LineSegment> from, List<LineSegment> to, List<LineSegment> left, List<LineSegment> right) {

  private static final Set<EdgeKind> SLANTED = Set.of(EdgeKind.HIP, EdgeKind.VALLEY);

  /** A run of neighbouring edges; the index of the last one may be past the end of the ring. */
  private record Run(int first, int last) {}

  /** Ways from the lowest edges of a plane to its ridges; none where it comes to a point. */
  static List<Way> upTo(PlaneLayout plane) {
    return between(plane.edges(), lowest(plane), highest(plane));
  }

  /**
   * The way from the lowest edges of a plane to an opening. The level of its sill bounds the way at
   * both sides of it; what lies above does not count.
   */
  static Way toOpening(PlaneLayout plane, EscapeOpening opening, double widthM) {
    double upM = opening.at().up().m();
    double middleM = opening.at().along().m() + opening.width().m() / 2;
    double halfM = Math.max(widthM, opening.width().m()) / 2;
    List<LineSegment> left = new ArrayList<>();
    List<LineSegment> right = new ArrayList<>();
    plane.edges().stream()
        .filter(lowest(plane).negate())
        .map(PlaneEdge::line)
        .filter(line -> Math.min(line.p0.y, line.p1.y) < upM)
        .forEach(line -> (line.midPoint().x < middleM ? left : right).add(line));
    Envelope box = box(plane);
    left.add(new LineSegment(Math.min(box.getMinX(), middleM - halfM), upM, middleM - halfM, upM));
    right.add(new LineSegment(middleM + halfM, upM, Math.max(box.getMaxX(), middleM + halfM), upM));
    return new Way(List.of(), List.of(), left, right);
  }

  /** Ways from the left side of a plane to its right side. */
  static List<Way> across(PlaneLayout plane) {
    Predicate<PlaneEdge> ends = lowest(plane).or(highest(plane));
    Predicate<PlaneEdge> left = edge -> edge.line().p1.y < edge.line().p0.y;
    return between(plane.edges(), left.and(ends.negate()), left.or(ends).negate());
  }

  static Predicate<PlaneEdge> lowest(PlaneLayout plane) {
    double lowM = box(plane).getMinY();
    return edge -> isAt(edge, lowM);
  }

  /** The ridge; the upper edge of a plane that has none, such as a monoslope. */
  static Predicate<PlaneEdge> highest(PlaneLayout plane) {
    if (plane.edges().stream().anyMatch(edge -> edge.kind() == EdgeKind.RIDGE)) {
      return edge -> edge.kind() == EdgeKind.RIDGE;
    }
    double highM = box(plane).getMaxY();
    return edge -> isAt(edge, highM) && !SLANTED.contains(edge.kind());
  }

  private static Envelope box(PlaneLayout plane) {
    return plane.outline().orElseThrow().getEnvelopeInternal();
  }

  private static boolean isAt(PlaneEdge edge, double upM) {
    return Snap.m(edge.line().p0.y - upM) == 0 && Snap.m(edge.line().p1.y - upM) == 0;
  }

  static List<Way> between(
      List<PlaneEdge> edges, Predicate<PlaneEdge> starts, Predicate<PlaneEdge> ends) {
    List<Way> ways = new ArrayList<>();
    for (Run from : runs(edges, starts)) {
      for (Run to : runs(edges, ends)) {
        ways.add(
            new Way(
                lines(edges, from.first(), from.last()),
                lines(edges, to.first(), to.last()),
                lines(edges, to.last() + 1, from.first() - 1),
                lines(edges, from.last() + 1, to.first() - 1)));
      }
    }
    return ways;
  }

  private static List<Run> runs(List<PlaneEdge> edges, Predicate<PlaneEdge> is) {
    List<Run> runs = new ArrayList<>();
    int count = edges.size();
    for (int i = 0; i < count; i++) {
      if (is.test(edges.get(i)) && !is.test(edges.get((i + count - 1) % count))) {
        int last = i;
        while (is.test(edges.get((last + 1) % count)) && last < i + count) {
          last++;
        }
        runs.add(new Run(i, last));
      }
    }
    return runs;
  }

  /** The edges from one index round to another, in the order of the ring. */
  private static List<LineSegment> lines(List<PlaneEdge> edges, int first, int last) {
    int count = edges.size();
    List<LineSegment> lines = new ArrayList<>();
    for (int n = 0; n < Math.floorMod(last - first + 1, count); n++) {
      lines.add(edges.get(Math.floorMod(first + n, count)).line());
    }
    return lines;
  }

  /** Least distance between its two sides [m]. */
  double narrowestM() {
    double leastM = Double.POSITIVE_INFINITY;
    for (LineSegment one : left) {
      for (LineSegment other : right) {
        leastM = Math.min(leastM, one.distance(other));
      }
    }
    return leastM;
  }
}
