package clampwise.source;

import java.util.ArrayList;
import java.util.List;

/** Collects every problem of a run, so that the designer sees all of them at once. */
public final class Problems {

  private final List<Problem> found = new ArrayList<>();

  public void add(Problem problem) {
    found.add(problem);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** All problems in file order, without repeats. */
  public List<Problem> sorted() {
    return found.stream().distinct().sorted().toList();
  }
}
