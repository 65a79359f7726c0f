package clampwise.cli;

import clampwise.review.Review;

/** Where jobs are reviewed. */
@FunctionalInterface
interface Desk {

  /**
   * Reviews one job.
   *
   * @param name path of the job file, or {@code -} for the console's standard input
   */
  Review review(String name, Console console);
}
