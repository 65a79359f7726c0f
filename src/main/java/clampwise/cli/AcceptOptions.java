package clampwise.cli;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is to be accepted.
 *
 * @param job the job file
 * @param what number of the finding in the printed list, or id of its rule
 * @param subject what the finding is about, where a rule has several
 * @param thisRevision whether it holds for the job's revision only
 */
record AcceptOptions(
    String job,
    String what,
    Optional<String> subject,
    String reason,
    String by,
    LocalDate until,
    boolean thisRevision,
    DeskOptions desk) {}
