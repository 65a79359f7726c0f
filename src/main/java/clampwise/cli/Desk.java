package clampwise.cli;

import clampwise.batch.ResultCache;
import clampwise.policy.Policy;
import clampwise.review.Review;
import clampwise.rulebook.OwnRules;
import clampwise.source.Problem;
import java.util.List;

/** Where jobs are reviewed. */
@FunctionalInterface
interface Desk {

  /**
   * Reviews one job.
   *
   * @param name path of the job file, or {@code -} for the console's standard input
   */
  Review review(String name, Console console);

  /** The review of a job in which known debts are findings like any other. */
  default Review withDebts(String name, Console console) {
    return review(name, console);
  }

  /** The policy in force for a job file. */
  default Policy policy(String job) {
    return Policy.NONE;
  }

  /** The same desk with rules that a company wrote for itself. */
  default Desk with(OwnRules own) {
    return this;
  }

  /** Those rules. */
  default OwnRules own() {
    return OwnRules.NONE;
  }

  /** The policy and the day that were named for all jobs; empty if none were. */
  default String asked() {
    return "";
  }

  /** The same desk, whose reviews hold no facts and may come from a cache. */
  default Desk light(ResultCache cache) {
    return this;
  }

  /** What is said where there is no job to review. */
  static Review unreadable(Problem problem) {
    return new Review(
        problem.at().file(), "", 0, List.of(problem), List.of(), List.of(), List.of());
  }
}
