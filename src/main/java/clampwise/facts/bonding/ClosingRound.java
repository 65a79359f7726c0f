package clampwise.facts.bonding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Ties every smallest group that hangs on one frame to something beyond that frame, once. */
final class ClosingRound {

  private static final int NONE = -1;

  private final Net net;
  private final int[][] beside;
  private final Walk walk;
  private final HangingGroups groups;
  private final TreeSet<Integer> open;
  private final TreeMap<Integer, Integer> byPlace = new TreeMap<>();
  private final List<int[]> added = new ArrayList<>();

  ClosingRound(Net net, int[][] beside) {
    this.net = net;
    this.beside = beside;
    this.walk = net.walk();
    this.groups = new HangingGroups(walk, net.ground());
    this.open = new TreeSet<>(groups.all());
    open.forEach(group -> byPlace.put(walk.place(group), group));
  }

  boolean isOpen() {
    return !open.isEmpty();
  }

  List<int[]> added() {
    return added;
  }

  /** Ties all groups; with lugs alone where jumpers took too long. */
  void close(boolean lugsAlone) {
    if (!lugsAlone) {
      groundFarEnds();
      for (int group : List.copyOf(open)) {
        tie(group, other -> groups.of(other) != group && open.contains(groups.of(other)));
      }
      for (int group : List.copyOf(open)) {
        tie(group, other -> groups.leadsOut(group, other));
      }
    }
    List.copyOf(open).forEach(this::ground);
  }

  /** Where all hangs on the only frame with a lug, no jumper within the island would do. */
  private void groundFarEnds() {
    int[] cutOff = walk.cutOff();
    for (int first : walk.reached()) {
      int behind = walk.size(first) - 1;
      boolean lone = walk.before(first) == net.ground() && cutOff[first] == behind && behind > 0;
      if (lone && !leadsToAnotherIsland(first)) {
        behind(first).max().ifPresent(this::ground);
      }
    }
  }

  private IntStream behind(int first) {
    int from = walk.place(first);
    return byPlace.subMap(from, from + walk.size(first)).values().stream().mapToInt(i -> i);
  }

  private boolean leadsToAnotherIsland(int first) {
    return behind(first)
        .anyMatch(
            group ->
                Arrays.stream(walk.behind(group))
                    .anyMatch(frame -> nearest(frame, i -> !walk.isBehind(i, first)) != NONE));
  }

  private void ground(int group) {
    add(group, groups.last(group), net.ground());
  }

  private void tie(int group, IntPredicate wanted) {
    int[] own = walk.behind(group);
    Arrays.sort(own);
    for (int i = own.length - 1; i >= 0 && open.contains(group); i--) {
      int other = nearest(own[i], wanted);
      if (other != NONE) {
        add(group, own[i], other);
      }
    }
  }

  private void add(int group, int frame, int other) {
    int[] pair = {frame, other};
    net.join(pair);
    added.add(pair);
    open.remove(group);
    open.remove(groups.of(other));
  }

  /** The frame beside another one that is wanted and nearest to ground in the walk. */
  private int nearest(int frame, IntPredicate wanted) {
    int best = NONE;
    for (int other : beside[frame]) {
      boolean nearer = best == NONE || walk.place(other) < walk.place(best);
      if (nearer && walk.isGrounded(other) && wanted.test(other)) {
        best = other;
      }
    }
    return best;
  }
}
