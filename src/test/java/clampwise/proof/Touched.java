package clampwise.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What the defects of one job changed, and where their findings must point. */
final class Touched {
  private final List<String> changed = new ArrayList<>();
  private final List<String> pointed = new ArrayList<>();

  /** Adds a defect; false, and nothing is added, if it meets one that was there before. */
  boolean add(List<String> changes, List<String> points) {
    boolean free = !meet(changes, changed) && !meet(changes, pointed) && !meet(points, changed);
    if (free) {
      changed.addAll(changes);
      pointed.addAll(points);
    }
    return free;
  }

  private static boolean meet(Collection<String> some, Collection<String> others) {
    return some.stream().anyMatch(one -> others.stream().anyMatch(other -> meet(one, other)));
  }

  private static boolean meet(String one, String other) {
    return one.equals(other) || one.startsWith(other + ".") || other.startsWith(one + ".");
  }
}
