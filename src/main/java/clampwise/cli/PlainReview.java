package clampwise.cli;

import java.util.List;
import java.util.Optional;

/**
 * Recognises {@code review} without options, the command people run most, so that it need not wait
 * for the parser of all commands: loading that takes longer than starting Java.
 */
final class PlainReview {

  private PlainReview() {}

  /** What was asked for; empty when anything else than jobs was given. */
  static Optional<ReviewOptions> of(String... arguments) {
    if (arguments.length < 2 || !arguments[0].equals("review")) {
      return Optional.empty();
    }
    List<String> jobs = List.of(arguments).subList(1, arguments.length);
    for (String job : jobs) {
      if (!isJob(job)) {
        return Optional.empty();
      }
    }
    return Optional.of(ReviewOptions.of(jobs));
  }

  private static boolean isJob(String word) {
    return word.equals("-") || !word.startsWith("-");
  }
}
