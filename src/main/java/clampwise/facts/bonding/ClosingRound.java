package clampwise.facts.bonding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Ties every smallest group that hangs on one frame to something beyond that frame, once. */
final class ClosingRound {

  private static final int NONE = -1;

  private final Net net;
  private final Frames frames;
  private final Walk walk;
  private final int[] groupOf;
  private final TreeSet<Integer> open = new TreeSet<>();
  private final TreeMap<Integer, Integer> byPlace = new TreeMap<>();
  private final List<int[]> added = new ArrayList<>();

  ClosingRound(Net net, Frames frames) {
    this.net = net;
    this.frames = frames;
    this.walk = net.walk();
    this.groupOf = new int[net.ground() + 1];
    Arrays.fill(groupOf, NONE);
    findGroups();
  }

  /** From the last frame of the walk back, so that a group within another one comes first. */
  private void findGroups() {
    int[] reached = walk.reached();
    boolean[] holds = new boolean[groupOf.length];
    for (int i = reached.length - 1; i >= 0; i--) {
      int frame = reached[i];
      if (!holds[frame] && walk.hangs(frame)) {
        holds[frame] = true;
        Arrays.stream(walk.behind(frame)).forEach(each -> groupOf[each] = frame);
        open.add(frame);
        byPlace.put(walk.place(frame), frame);
      }
      holds[walk.before(frame)] |= holds[frame];
    }
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
        tie(group, other -> groupOf[other] != group && open.contains(groupOf[other]));
      }
      for (int group : List.copyOf(open)) {
        tie(group, other -> leadsOut(group, other));
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
        groups(first).max().ifPresent(this::ground);
      }
    }
  }

  private IntStream groups(int first) {
    int from = walk.place(first);
    return byPlace.subMap(from, from + walk.size(first)).values().stream().mapToInt(i -> i);
  }

  private boolean leadsToAnotherIsland(int first) {
    return groups(first)
        .anyMatch(
            group ->
                Arrays.stream(walk.behind(group))
                    .anyMatch(
                        frame -> beside(frame, other -> !walk.isBehind(other, first)).isPresent()));
  }

  private boolean leadsOut(int group, int other) {
    return groupOf[other] != group && walk.before(group) != other;
  }

  private void ground(int group) {
    add(group, last(group), net.ground());
  }

  private int last(int group) {
    return Arrays.stream(walk.behind(group)).max().orElseThrow();
  }

  private void tie(int group, IntPredicate wanted) {
    int[] own = walk.behind(group);
    Arrays.sort(own);
    for (int i = own.length - 1; i >= 0 && open.contains(group); i--) {
      int frame = own[i];
      beside(frame, wanted).ifPresent(other -> add(group, frame, other));
    }
  }

  private void add(int group, int frame, int other) {
    int[] pair = {frame, other};
    net.join(pair);
    added.add(pair);
    open.remove(group);
    open.remove(groupOf[other]);
  }

  /** The frame beside another one that is wanted and nearest to ground in the walk. */
  private OptionalInt beside(int frame, IntPredicate wanted) {
    return frames
        .beside(net.frame(frame))
        .mapToInt(net::number)
        .filter(walk::isGrounded)
        .filter(wanted)
        .boxed()
        .min(Comparator.comparingInt(walk::place))
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }
}
