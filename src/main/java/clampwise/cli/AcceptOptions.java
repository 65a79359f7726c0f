package clampwise.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is to be accepted.
 *
 * @param job the job file
 * @param findings numbers of findings in the printed list, or ids of their rules
 * @param subject what the finding is about, where a rule has several
 * @param thisRevision whether it holds for the job's revision only
 */
record AcceptOptions(
    String job,
    List<String> findings,
    Optional<String> subject,
    String reason,
    String by,
    LocalDate until,
    boolean thisRevision,
    DeskOptions desk) {}
