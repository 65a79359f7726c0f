package clampwise.facts.fire;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Counts how many corridors of a width lead side by side past everything that stands on a plane.
 *
 * <p>No corridor is drawn. Corridors are cut by every chain of blockers from the left side of the
 * plane to its right side; between two neighbours of a chain pass as many as their distance holds
 * whole widths, and the chain that lets the fewest pass tells the answer (the theorem of Menger for
 * thick paths). That is exact for corridors that bend, and needs only distances.
 */
final class Corridors {

  private static final double TOUCH_M = 1e-6;

  private final List<Blocker> blockers;
  private final Way way;
  private final double widthM;
  private final int enough;
  private final STRtree near = new STRtree();
  private final int[] passed;
  private final List<Deque<Integer>> open;
  private int fewest;

  private Corridors(List<Blocker> blockers, Way way, double widthM, int enough) {
    this.blockers = blockers;
    this.way = way;
    this.widthM = widthM;
    this.enough = enough;
    this.passed = new int[blockers.size()];
    this.open = Stream.<Deque<Integer>>generate(ArrayDeque::new).limit(enough).toList();
    this.fewest = fit(way.narrowestM());
    Arrays.fill(passed, enough);
    IntStream.range(0, blockers.size()).forEach(i -> near.insert(blockers.get(i).box(), i));
    near.build();
  }

  /**
   * The number of corridors.
   *
   * @param enough how many are asked for; more are not counted
   */
  static int count(List<Blocker> blockers, Way way, double widthM, int enough) {
    return new Corridors(blockers, way, widthM, enough).count();
  }

  private int count() {
    for (int i = 0; i < blockers.size(); i++) {
      reach(i, fit(fromM(way.left(), i)));
    }
    for (int level = 0; level < fewest; level++) {
      while (!open.get(level).isEmpty()) {
        visit(open.get(level).remove(), level);
      }
    }
    return fewest;
  }

  private void visit(int blocker, int level) {
    if (passed[blocker] < level) {
      return;
    }
    fewest = Math.min(fewest, level + fit(fromM(way.right(), blocker)));
    Envelope reach = new Envelope(blockers.get(blocker).box());
    reach.expandBy((fewest - level) * widthM);
    for (Object other : near.query(reach)) {
      double apartM = blockers.get(blocker).distanceM(blockers.get((Integer) other));
      reach((Integer) other, level + fit(apartM));
    }
  }

  /** Notes that a chain from the left reaches a blocker and lets so many corridors pass. */
  private void reach(int blocker, int passing) {
    if (passing < passed[blocker]) {
      passed[blocker] = passing;
      open.get(passing).add(blocker);
    }
  }

  private double fromM(List<LineSegment> side, int blocker) {
    double leastM = Double.POSITIVE_INFINITY;
    for (LineSegment edge : side) {
      leastM = Math.min(leastM, blockers.get(blocker).distanceM(edge, enough * widthM));
    }
    return leastM;
  }

  private int fit(double apartM) {
    return (int) Math.min(enough, Math.floor((apartM + TOUCH_M) / widthM));
  }
}
