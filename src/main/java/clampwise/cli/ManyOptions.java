package clampwise.cli;

import java.util.Optional;

/**
 * What was asked for beyond the review of each job.
 *
 * @param cores how many jobs are reviewed at once; all cores when empty
 */
record ManyOptions(Optional<Integer> cores) {

  static final ManyOptions NONE = new ManyOptions(Optional.empty());
}
