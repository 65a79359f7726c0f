package clampwise.cli;

import java.util.Optional;

/**
 * What was asked for beyond the review of each job.
 *
 * @param cores how many jobs are reviewed at once; all cores when empty
 * @param changed revision since which something must have changed for a job, if so
 */
record ManyOptions(Optional<Integer> cores, Optional<String> changed) {

  static final ManyOptions NONE = new ManyOptions(Optional.empty(), Optional.empty());
}
