package clampwise.cli;

import clampwise.batch.JobResult;
import clampwise.review.Review;

/** What the program answers to the shell. */
public final class ExitCode {

  /** Nothing at or above the threshold. */
  public static final int CLEAR = 0;

  /** Findings at or above the threshold. */
  public static final int FINDINGS = 1;

  /** Wrong usage, unreadable input or unwritable output. */
  public static final int UNUSABLE = 2;

  /** A fault of the program itself. */
  public static final int FAULT = 70;

  private ExitCode() {}

  /** What becomes of one job of many answers. */
  static int of(JobResult job, ReviewOptions options) {
    return job.review().map(review -> of(review, options)).orElse(FAULT);
  }

  /** What the review of a job answers. */
  static int of(Review review, ReviewOptions options) {
    if (!review.problems().isEmpty()) {
      return UNUSABLE;
    }
    return options.fails(review) ? FINDINGS : CLEAR;
  }
}
