package clampwise.cli;

import clampwise.finding.Finding;
import clampwise.finding.Severity;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;

/** From which severity on a finding counts as a failure. */
enum Threshold {
  ERROR,
  WARNING,
  NOTE,
  NEVER;

  boolean reachedBy(Severity severity) {
    return this != NEVER && severity.ordinal() <= ordinal();
  }

  boolean reachedBy(Review review) {
    return review.findings().stream().anyMatch(finding -> reachedBy(finding.severity()));
  }

  /** The review without the findings below the threshold. */
  Review reduce(Review review) {
    List<Finding> kept = new ArrayList<>(review.findings());
    kept.removeIf(finding -> !reachedBy(finding.severity()));
    return review.with(kept);
  }
}
