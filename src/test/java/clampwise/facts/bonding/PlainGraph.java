package clampwise.facts.bonding;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Frames, what joins them, and what is grounded: answers by trying, module by module. */
final class PlainGraph {

  private static final String GROUND = "ground";

  private final Map<String, Set<String>> joined = new HashMap<>();

  PlainGraph(RandomBonding layout) {
    layout.frames.forEach(frame -> joined.put(frame, new HashSet<>()));
    joined.put(GROUND, new HashSet<>());
    layout.joints.forEach(pair -> join(pair.get(0), pair.get(1)));
    layout.lugs.forEach(lug -> join(lug, GROUND));
  }

  private PlainGraph(PlainGraph other) {
    other.joined.forEach((frame, all) -> joined.put(frame, new HashSet<>(all)));
  }

  /** The graph with further parts: two frames each, or one for a lug. */
  PlainGraph with(Collection<List<String>> parts) {
    PlainGraph more = new PlainGraph(this);
    parts.forEach(part -> more.join(part.get(0), part.size() == 1 ? GROUND : part.get(1)));
    return more;
  }

  private void join(String one, String other) {
    joined.get(one).add(other);
    joined.get(other).add(one);
  }

  Set<String> grounded() {
    return groundedWithout("");
  }

  /** Frames that lose ground when one is taken out, itself not counted. */
  int cutOffBy(String frame) {
    Set<String> before = grounded();
    before.remove(frame);
    return before.size() - groundedWithout(frame).size();
  }

  boolean holdsWithoutAny() {
    return grounded().stream().allMatch(frame -> cutOffBy(frame) == 0);
  }

  private Set<String> groundedWithout(String gone) {
    Set<String> reached = new HashSet<>();
    Deque<String> next = new ArrayDeque<>(List.of(GROUND));
    while (!next.isEmpty()) {
      for (String frame : joined.get(next.remove())) {
        if (!frame.equals(gone) && !frame.equals(GROUND) && reached.add(frame)) {
          next.add(frame);
        }
      }
    }
    return reached;
  }

  /** The fewest of some parts that leave no frame hanging on another one. */
  int fewest(List<List<String>> parts) {
    return fewest(parts, PlainGraph::holdsWithoutAny);
  }

  /** The fewest of some parts that ground all frames. */
  int fewestToGround(List<List<String>> parts) {
    return fewest(parts, graph -> graph.grounded().size() == joined.size() - 1);
  }

  private int fewest(List<List<String>> parts, Predicate<PlainGraph> wanted) {
    for (int size = 0; size <= parts.size(); size++) {
      if (any(parts, size, 0, wanted)) {
        return size;
      }
    }
    throw new AssertionError("not even all parts do");
  }

  private boolean any(List<List<String>> parts, int size, int from, Predicate<PlainGraph> wanted) {
    if (size == 0) {
      return wanted.test(this);
    }
    for (int i = from; i < parts.size(); i++) {
      if (with(List.of(parts.get(i))).any(parts, size - 1, i + 1, wanted)) {
        return true;
      }
    }
    return false;
  }
}
