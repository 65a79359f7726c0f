package clampwise.facts.bonding;

import java.util.Arrays;

/**
 * One walk over the frames from ground. It tells what hangs on a single frame: a branch of the walk
 * from which no part leads past the frame that it branches off from.
 *
 * <p>Depth-first search with low points (Tarjan 1972); ground itself is never taken out.
 */
final class Walk {

  private static final int UNSEEN = -1;

  private final int ground;
  private final int[][] joined;
  private final int[] order;
  private final int[] place;
  private final int[] low;
  private final int[] before;
  private final int[] size;
  private int seen;

  /**
   * @param joined for each frame those it is joined to, last of all for ground
   */
  Walk(int[][] joined) {
    this.joined = joined;
    this.ground = joined.length - 1;
    this.order = new int[joined.length];
    this.place = new int[joined.length];
    this.low = new int[joined.length];
    this.before = new int[joined.length];
    this.size = new int[joined.length];
    Arrays.fill(place, UNSEEN);
    Arrays.fill(before, UNSEEN);
    walk();
  }

  private void walk() {
    int[] next = new int[joined.length];
    enter(ground);
    int at = ground;
    while (at != UNSEEN) {
      if (next[at] < joined[at].length) {
        at = step(at, joined[at][next[at]++]);
      } else {
        at = leave(at);
      }
    }
  }

  private int step(int from, int to) {
    if (place[to] == UNSEEN) {
      before[to] = from;
      enter(to);
      return to;
    }
    low[from] = Math.min(low[from], place[to]);
    return from;
  }

  private void enter(int frame) {
    order[seen] = frame;
    place[frame] = seen;
    low[frame] = seen++;
  }

  private int leave(int frame) {
    int back = before[frame];
    size[frame] = seen - place[frame];
    if (back != UNSEEN) {
      low[back] = Math.min(low[back], low[frame]);
    }
    return back;
  }

  boolean isGrounded(int frame) {
    return place[frame] != UNSEEN;
  }

  /** Whether a frame and all behind it hang on the frame before it. */
  boolean hangs(int frame) {
    int from = before[frame];
    return from != UNSEEN && from != ground && low[frame] >= place[from];
  }

  /** The frame that a frame was reached from. */
  int before(int frame) {
    return before[frame];
  }

  /** Whether a frame lies behind another one, or is it. */
  boolean isBehind(int frame, int other) {
    return place[frame] >= place[other] && place[frame] < place[other] + size[other];
  }

  /** A frame and those behind it, as they were reached. */
  int[] behind(int frame) {
    return Arrays.copyOfRange(order, place[frame], place[frame] + size[frame]);
  }

  /** How many frames lie behind a frame, itself counted. */
  int size(int frame) {
    return size[frame];
  }

  /** Where a frame comes in the walk. */
  int place(int frame) {
    return place[frame];
  }

  /** The grounded frames as they were reached. */
  int[] reached() {
    return Arrays.copyOfRange(order, 1, seen);
  }

  /** Whether all grounded frames hang on a single one of them. */
  boolean hangsOnOneLug() {
    int first = order[Math.min(1, seen - 1)];
    return seen > 2 && size[first] == seen - 1 && cutOff()[first] == seen - 2;
  }

  /** The most groups that hang on one frame. */
  int mostHanging() {
    int[] groups = new int[ground];
    int most = 0;
    for (int i = 1; i < seen; i++) {
      if (hangs(order[i])) {
        most = Math.max(most, ++groups[before[order[i]]]);
      }
    }
    return most;
  }

  /** For each frame, how many others lose ground when it is taken out. */
  int[] cutOff() {
    int[] cut = new int[ground];
    for (int frame : reached()) {
      if (hangs(frame)) {
        cut[before[frame]] += size[frame];
      }
    }
    return cut;
  }
}
