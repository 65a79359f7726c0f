package clampwise.source;

import java.util.ArrayList;
import java.util.List;

/** Collects every problem of a run, so that the designer sees all of them at once. */
public final class Problems {

  private static final int MOST = 1000;

  private final List<Problem> found = new ArrayList<>();

  /** Records a problem; a flood of them is cut off, so that nonsense is refused quickly. */
  public void add(Problem problem) {
    if (found.size() < MOST) {
      found.add(problem);
    }
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many were recorded so far. */
  public int count() {
    return found.size();
  }

  /** All problems in file order, without repeats. */
  public List<Problem> sorted() {
    return found.stream().distinct().sorted().toList();
  }
}
