package clampwise.cli;

import java.util.List;
import java.util.Optional;

/**
 * How a take-off was asked for.
 *
 * @param jobs files to take off; {@code -} is standard input
 * @param spares share of spares, if one was given
 */
record TakeoffOptions(List<String> jobs, Format format, Optional<Double> spares) {

  /** How take-offs are written. */
  enum Format {
    TEXT,
    CSV,
    JSON
  }
}
