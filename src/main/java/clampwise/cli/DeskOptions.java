package clampwise.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a desk is set up with.
 *
 * @param policy the one policy file for all jobs; otherwise each job's own is found
 * @param today day on which the review counts as made; otherwise that of the clock
 */
record DeskOptions(Optional<Path> policy, Optional<LocalDate> today) {

  static final DeskOptions PLAIN = new DeskOptions(Optional.empty(), Optional.empty());

  /** Opens a desk. */
  @FunctionalInterface
  interface Opener {
    Desk open(DeskOptions options);
  }
}
