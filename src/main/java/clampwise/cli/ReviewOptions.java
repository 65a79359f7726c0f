package clampwise.cli;

import clampwise.finding.Finding;
import clampwise.finding.Threshold;
import clampwise.job.Flag;
import clampwise.policy.Policy;
import clampwise.policy.PolicyFile;
import clampwise.review.Review;
import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a review was asked for.
 *
 * @param jobs files to review; {@code -} is standard input
 * @param format how the reviews are written
 * @param quiet only what reaches the threshold
 * @param threshold what makes the run fail, if the command says so
 * @param calcSheet file that takes the calculations, if they are asked for
 * @param reports files that take reports
 * @param many what was asked for beyond the review of each job, if anything
 */
record ReviewOptions(
    List<String> jobs,
    Format format,
    boolean quiet,
    Optional<Threshold> threshold,
    Colouring colouring,
    Optional<String> calcSheet,
    ReportFiles reports,
    Optional<ManyOptions> many) {

  /** Signs by which a word is a pattern of names. */
  private static final String PATTERN = "*?[{";

  /** The same with another threshold. */
  ReviewOptions withThreshold(Optional<Threshold> other) {
    return new ReviewOptions(jobs, format, quiet, other, colouring, calcSheet, reports, many);
  }

  /** The same, printed as the policy of the working folder has it. */
  ReviewOptions printedAs(Policy policy) {
    Optional<PolicyFile.Output> output = policy.file().flatMap(PolicyFile::output);
    if (output.isEmpty()) {
      return this;
    }
    Format asked =
        output.get().format().map(word -> Format.valueOf(word.value().name())).orElse(format);
    boolean less = asked != Format.JSON && output.get().quiet().map(Flag::value).orElse(quiet);
    return new ReviewOptions(jobs, asked, less, threshold, colouring, calcSheet, reports, many);
  }

  /** Whether anything was asked for that only the facts of a job know. */
  boolean needsFacts() {
    return calcSheet.isPresent() || reports.needFacts();
  }

  /** From which severity on a job fails: as asked for, else as its house says, else at errors. */
  Threshold threshold(Review review) {
    return threshold.or(review::failOn).orElse(Threshold.ERROR);
  }

  /** Whether a job has a finding that counts. */
  boolean fails(Review review) {
    Threshold least = threshold(review);
    return review.findings().stream().anyMatch(finding -> least.reachedBy(finding.severity()));
  }

  /** The review without the findings below the threshold. */
  Review reduce(Review review) {
    Threshold least = threshold(review);
    List<Finding> kept = new ArrayList<>(review.findings());
    kept.removeIf(finding -> !least.reachedBy(finding.severity()));
    return review.with(kept);
  }

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
        Optional.empty(),
        Colouring.AUTO,
        Optional.empty(),
        ReportFiles.NONE,
        Optional.empty());
  }

  /** Whether there is one job and nothing but its review was asked for. */
  boolean isOneFile() {
    return jobs.size() == 1 && many.isEmpty() && isFile(jobs.get(0));
  }

  /** Whether a word can only be one file, or standard input. */
  private static boolean isFile(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (PATTERN.indexOf(word.charAt(i)) >= 0) {
        return false;
      }
    }
    return !new File(word).isDirectory();
  }

  /** Whether any file is to be written. */
  boolean writesFiles() {
    return calcSheet.isPresent() || !reports.files().isEmpty();
  }

  /** The files to be written. */
  ReviewFiles files(Desk desk) {
    return new ReviewFiles(calcSheet, reports, desk.own());
  }
}
