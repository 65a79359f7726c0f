package clampwise.facts.bonding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for the fewest parts that leave no frame hanging on another one: a hanging group needs a
 * part that leads out of it, so each such part is tried in turn, and given up where the groups that
 * are left need more parts than there may be.
 */
final class ClosingSearch {

  private final Net net;
  private final int[][] beside;
  private final long stepsAtMost;
  private final List<int[]> added = new ArrayList<>();
  private long steps;

  /**
   * @param net the frames without added parts
   * @param beside the frames that a jumper would tie to each frame
   * @param stepsAtMost frames and joints that may be walked over for each number of parts tried
   */
  ClosingSearch(Net net, int[][] beside, long stepsAtMost) {
    this.net = net;
    this.beside = beside;
    this.stepsAtMost = stepsAtMost;
  }

  /** The fewest parts, or the parts that are given where none fewer are found. */
  List<int[]> fewerThan(List<int[]> parts) {
    for (int most = groups(net.walk()).fewest(); most < parts.size(); most++) {
      steps = 0;
      if (closes(most)) {
        return List.copyOf(added);
      }
    }
    return parts;
  }

  private HangingGroups groups(Walk walk) {
    return new HangingGroups(walk, net.ground());
  }

  private boolean closes(int most) {
    Walk walk = net.walk();
    HangingGroups groups = groups(walk);
    steps += net.size();
    if (groups.all().isEmpty()) {
      return true;
    }
    if (groups.fewest() > most || steps > stepsAtMost) {
      return false;
    }
    for (int[] pair : fewestWays(walk, groups)) {
      net.join(pair);
      added.add(pair);
      if (closes(most - 1)) {
        return true;
      }
      net.part(pair);
      added.remove(pair);
    }
    return false;
  }

  /** The parts of which one is needed, for the group that has the fewest of them. */
  private List<int[]> fewestWays(Walk walk, HangingGroups groups) {
    List<int[]> best = List.of();
    for (int group : groups.all()) {
      List<int[]> ways = ways(walk, groups, group);
      if (best.isEmpty() || ways.size() < best.size()) {
        best = ways;
      }
    }
    return best;
  }

  /**
   * Jumpers to other hanging groups, jumpers to other frames, a lug; one of those that do alike.
   */
  private List<int[]> ways(Walk walk, HangingGroups groups, int group) {
    Map<Integer, int[]> toGroups = new LinkedHashMap<>();
    Map<Integer, int[]> toFrames = new LinkedHashMap<>();
    for (int frame : walk.behind(group)) {
      for (int other : beside[frame]) {
        if (walk.isGrounded(other) && groups.leadsOut(group, other)) {
          int[] pair = {frame, other};
          if (groups.of(other) < 0) {
            toFrames.putIfAbsent(other, pair);
          } else {
            toGroups.merge(groups.of(other), pair, ClosingSearch::farther);
          }
        }
      }
    }
    List<int[]> ways = new ArrayList<>(toGroups.values());
    ways.addAll(toFrames.values());
    ways.add(new int[] {groups.last(group), net.ground()});
    return ways;
  }

  private static int[] farther(int[] one, int[] other) {
    return one[0] >= other[0] ? one : other;
  }
}
