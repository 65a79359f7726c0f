package clampwise.report;

import clampwise.source.Problem;

/** A problem of reading in one line. */
public final class ProblemLine {

  private ProblemLine() {}

  /** What was found, what would be right and the nearest known word. */
  public static String of(Problem problem) {
    String nearest = problem.nearest().map(word -> "; nearest: " + word).orElse("");
    return problem.found() + "; expected " + problem.expected() + nearest;
  }
}
