package clampwise.cli;

import java.util.List;
import java.util.Optional;

/**
 * How a review was asked for.
 *
 * @param jobs files to review; {@code -} is standard input
 * @param format how the reviews are written
 * @param quiet only what reaches the threshold
 * @param threshold what makes the run fail
 * @param calcSheet file that takes the calculations, if they are asked for
 * @param reports files that take reports
 */
record ReviewOptions(
    List<String> jobs,
    Format format,
    boolean quiet,
    Threshold threshold,
    Colouring colouring,
    Optional<String> calcSheet,
    ReportFiles reports) {

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
        Threshold.ERROR,
        Colouring.AUTO,
        Optional.empty(),
        ReportFiles.NONE);
  }
}
