package clampwise.job;

import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;

/** Free text or a name. */
public record Text(String value, Span at) implements Written {
  /** Says that something has to stand here where nothing does. */
  public void isNeeded(String expected, Problems problems) {
    if (value.isBlank()) {
      problems.add(Problem.of(at, "nothing between the quotes", expected));
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
