package clampwise.cli;

import clampwise.batch.Share;
import java.util.Optional;

/**
 * What was asked for beyond the review of each job.
 *
 * @param cores how many jobs are reviewed at once; all cores when empty
 * @param changed revision since which something must have changed for a job, if so
 * @param cached whether results are kept from run to run
 * @param share which of the jobs are reviewed
 * @param to file that takes the results in place of any output
 */
record ManyOptions(
    Optional<Integer> cores,
    Optional<String> changed,
    boolean cached,
    Share share,
    Optional<String> to) {

  static final ManyOptions NONE =
      new ManyOptions(Optional.empty(), Optional.empty(), true, Share.ALL, Optional.empty());
}
