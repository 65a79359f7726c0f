package clampwise.calc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How many of a row's modules comply, as a step function of where the row starts.
 *
 * <p>Between two neighbouring breakpoints the count is constant; at a breakpoint it may be higher,
 * as zones include their ends.
 */
public final class PhaseSweep {

  private final double[] breaksM;
  private final int[] at;
  private final int[] after;

  private PhaseSweep(double[] breaksM, int[] at, int[] after) {
    this.breaksM = breaksM;
    this.at = at;
    this.after = after;
  }

  /** The count of the intervals that hold each point of a range. */
  static PhaseSweep of(List<Interval> intervals, Interval range) {
    double[] starts = intervals.stream().mapToDouble(Interval::fromM).sorted().toArray();
    double[] ends = intervals.stream().mapToDouble(Interval::toM).sorted().toArray();
    double[] breaks = breaks(starts, ends, range);
    int[] at = new int[breaks.length];
    int[] after = new int[breaks.length];
    int started = 0;
    int ended = 0;
    for (int i = 0; i < breaks.length; i++) {
      started = past(starts, started, breaks[i]);
      at[i] = started - ended;
      ended = past(ends, ended, breaks[i]);
      after[i] = started - ended;
    }
    return new PhaseSweep(breaks, at, after);
  }

  private static double[] breaks(double[] starts, double[] ends, Interval range) {
    DoubleStream borders = DoubleStream.of(range.fromM(), range.toM());
    DoubleStream all = DoubleStream.concat(Arrays.stream(starts), Arrays.stream(ends));
    return DoubleStream.concat(borders, all).sorted().distinct().toArray();
  }

  private static int past(double[] sorted, int index, double upTo) {
    int next = index;
    while (next < sorted.length && sorted[next] <= upTo) {
      next++;
    }
    return next;
  }

  /** Most modules that comply for any start. */
  public int best() {
    return Arrays.stream(at).max().orElse(0);
  }

  /** Fewest modules that comply for any start. */
  public int worst() {
    return Arrays.stream(after, 0, Math.max(1, after.length - 1)).min().orElse(0);
  }

  /** All starts for which the most modules comply. */
  public Intervals bestStarts() {
    return startsFor(best());
  }

  /** All starts for which at least so many modules comply. */
  public Intervals startsFor(int modules) {
    List<Interval> parts = new ArrayList<>();
    for (int i = 0; i < breaksM.length; i++) {
      if (at[i] >= modules) {
        boolean on = after[i] >= modules && i + 1 < breaksM.length;
        parts.add(new Interval(breaksM[i], on ? breaksM[i + 1] : breaksM[i]));
      }
    }
    return new Intervals(parts);
  }

  /** How many modules comply for one start [m] within the range. */
  public int countAt(double startM) {
    int found = Arrays.binarySearch(breaksM, Snap.m(startM));
    return found >= 0 ? at[found] : after[-found - 2];
  }
}
