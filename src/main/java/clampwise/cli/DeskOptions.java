package clampwise.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a desk is set up with.
 *
 * @param policy the one policy file for all jobs; otherwise each job's own is found
 * @param today day on which the review counts as made; otherwise that of the clock
 * @param inputFile where standard input would stand if it were a file
 */
record DeskOptions(Optional<Path> policy, Optional<LocalDate> today, Optional<Path> inputFile) {

  static final DeskOptions PLAIN =
      new DeskOptions(Optional.empty(), Optional.empty(), Optional.empty());

  /** Opens a desk. */
  @FunctionalInterface
  interface Opener {
    Desk open(DeskOptions options);
  }
}
