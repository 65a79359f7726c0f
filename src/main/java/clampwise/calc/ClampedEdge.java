package clampwise.calc;

import java.util.Arrays;

/**
 * A module edge that crosses the seams, and where on it clamps may sit.
 *
 * @param edgeM length of the edge [m]
 * @param zone clamp zone, measured from each corner inwards; what lies past the middle is left out
 */
public record ClampedEdge(double edgeM, Interval zone) {

  public ClampedEdge {
    zone = new Interval(zone.fromM(), Math.min(zone.toM(), edgeM / 2));
  }

  /**
   * Whether a seam falls in the clamp zone on both halves of the edge.
   *
   * @param seams seams that cross the edge
   * @param cornerM place of the edge's left corner [m]
   */
  public boolean complies(SeamPositions seams, double cornerM) {
    return has(seams, left().shifted(cornerM)) && has(seams, right().shifted(cornerM));
  }

  /**
   * All places of the left corner for which a seam falls in the clamp zone on both halves, by
   * interval arithmetic: a seam at s is in the left zone [e1, e2] for every corner in [s - e2, s -
   * e1], and in the right zone for every corner in [s - L + e1, s - L + e2].
   *
   * @param seams seams that cross the edge
   * @param range where the corner may lie [m]
   */
  public Intervals corners(SeamPositions seams, Interval range) {
    return corners(seams, left(), range).intersection(corners(seams, right(), range));
  }

  private Intervals corners(SeamPositions seams, Interval part, Interval range) {
    if (part.isEmpty()) {
      return Intervals.NONE;
    }
    double[] near = seams.within(range.fromM() + part.fromM(), range.toM() + part.toM());
    return new Intervals(
        Arrays.stream(near)
            .mapToObj(s -> new Interval(Snap.m(s - part.toM()), Snap.m(s - part.fromM())))
            .map(range::and)
            .toList());
  }

  private Interval left() {
    return zone;
  }

  private Interval right() {
    return new Interval(edgeM - zone.toM(), edgeM - zone.fromM());
  }

  private static boolean has(SeamPositions seams, Interval part) {
    return !part.isEmpty() && seams.within(part.fromM(), part.toM()).length > 0;
  }
}
