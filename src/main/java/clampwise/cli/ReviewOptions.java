package clampwise.cli;

import clampwise.finding.Finding;
import clampwise.finding.Threshold;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a review was asked for.
 *
 * @param jobs files to review; {@code -} is standard input
 * @param format how the reviews are written
 * @param quiet only what reaches the threshold
 * @param threshold what makes the run fail, if the command says so
 * @param calcSheet file that takes the calculations, if they are asked for
 * @param reports files that take reports
 */
record ReviewOptions(
    List<String> jobs,
    Format format,
    boolean quiet,
    Optional<Threshold> threshold,
    Colouring colouring,
    Optional<String> calcSheet,
    ReportFiles reports) {

  /** From which severity on a job fails: as asked for, else as its house says, else at errors. */
  Threshold threshold(Review review) {
    return threshold.or(review::failOn).orElse(Threshold.ERROR);
  }

  /** Whether a job has a finding that counts. */
  boolean fails(Review review) {
    Threshold least = threshold(review);
    return review.findings().stream().anyMatch(finding -> least.reachedBy(finding.severity()));
  }

  /** The review without the findings below the threshold. */
  Review reduce(Review review) {
    Threshold least = threshold(review);
    List<Finding> kept = new ArrayList<>(review.findings());
    kept.removeIf(finding -> !least.reachedBy(finding.severity()));
    return review.with(kept);
  }

  /** How the reviews are written. */
  enum Format {
    TEXT,
    LINES,
    JSON
  }

  /** When to colour. */
  enum Colouring {
    AUTO,
    ALWAYS,
    NEVER
  }

  /** Files to review and nothing said about how. */
  static ReviewOptions of(List<String> jobs) {
    return new ReviewOptions(
        jobs,
        Format.TEXT,
        false,
        Optional.empty(),
        Colouring.AUTO,
        Optional.empty(),
        ReportFiles.NONE);
  }
}
