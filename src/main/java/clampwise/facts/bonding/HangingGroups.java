package clampwise.facts.bonding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The smallest groups of frames that hang on a single frame: each needs an end of an added part,
 * and within one it does not matter on which frame that end is.
 */
final class HangingGroups {

  private static final int NONE = -1;

  private final Walk walk;
  private final int[] groupOf;
  private final List<Integer> all = new ArrayList<>();

  /**
   * @param walk the walk over all frames
   * @param ground the number of ground
   */
  HangingGroups(Walk walk, int ground) {
    this.walk = walk;
    this.groupOf = new int[ground + 1];
    Arrays.fill(groupOf, NONE);
    find();
  }

  /** From the last frame of the walk back, so that a group within another one comes first. */
  private void find() {
    int[] reached = walk.reached();
    boolean[] holds = new boolean[groupOf.length];
    for (int i = reached.length - 1; i >= 0; i--) {
      int frame = reached[i];
      if (!holds[frame] && walk.hangs(frame)) {
        holds[frame] = true;
        for (int each : walk.behind(frame)) {
          groupOf[each] = frame;
        }
        all.add(frame);
      }
      holds[walk.before(frame)] |= holds[frame];
    }
  }

  /** The groups, each by the frame at which the walk entered it. */
  List<Integer> all() {
    return all;
  }

  /** The group of a frame, or a number that is no frame's. */
  int of(int frame) {
    return groupOf[frame];
  }

  /** Whether a part from a group to a frame leads past the frame on which the group hangs. */
  boolean leadsOut(int group, int frame) {
    return groupOf[frame] != group && walk.before(group) != frame;
  }

  /** The frame of a group that comes last in the layout: the far end of a column. */
  int last(int group) {
    int last = group;
    for (int frame : walk.behind(group)) {
      last = Math.max(last, frame);
    }
    return last;
  }

  /**
   * The fewest parts that may close all: a part has two ends, one group needs one, and where all
   * hangs on the only frame with a lug one end is at ground. Where several groups hang on one
   * frame, each needs a part of its own to be held without it.
   */
  int fewest() {
    if (all.isEmpty()) {
      return 0;
    }
    int ends = all.size() + (walk.hangsOnOneLug() ? 1 : 0);
    return Math.max((ends + 1) / 2, walk.mostHanging());
  }
}
