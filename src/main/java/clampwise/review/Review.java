package clampwise.review;

import clampwise.facts.Facts;
import clampwise.facts.loads.CalcSheet;
import clampwise.finding.Accepted;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Threshold;
import clampwise.source.Problem;
import clampwise.source.SourceText;
import java.util.List;
import java.util.Optional;

/**
 * What a review of one job says.
 *
 * @param file the job file as the user named it
 * @param title what the job is called
 * @param revision revision of the drawings, as the job names it; empty if it does not
 * @param modules modules that were laid out; of none nothing was reviewed
 * @param problems what could not be read
 * @param findings in the one order every report uses
 * @param notChecked what could not be judged, and why
 * @param coverage how far each rule got, in order of rule id
 * @param facts what the rules were asked about; none where nothing could be laid out
 * @param accepted findings that somebody has answered for; they are not among the findings
 * @param failOn from which severity on the house fails a job, if its policy says so
 * @param sources the files as they were read, the job first
 */
public record Review(
    String file,
    String title,
    String revision,
    int modules,
    List<Problem> problems,
    List<Finding> findings,
    List<NotChecked> notChecked,
    List<Coverage> coverage,
    List<Accepted> accepted,
    Optional<Threshold> failOn,
    Optional<Facts> facts,
    List<SourceText> sources) {

  /** A review of a job of which nothing could be laid out. */
  public Review(
      String file,
      String title,
      int modules,
      List<Problem> problems,
      List<Finding> findings,
      List<NotChecked> notChecked,
      List<Coverage> coverage) {
    this(
        file,
        title,
        "",
        modules,
        problems,
        findings,
        notChecked,
        coverage,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** The calculations behind it. */
  public CalcSheet sheet() {
    return facts.map(known -> new CalcSheet(known.facts())).orElse(CalcSheet.EMPTY);
  }

  /** The same review with only some of its findings. */
  public Review with(List<Finding> kept) {
    return with(problems, kept, accepted);
  }

  /** The same review after somebody has answered for some of its findings. */
  public Review with(List<Problem> unread, List<Finding> open, List<Accepted> answered) {
    return new Review(
        file,
        title,
        revision,
        modules,
        unread,
        open,
        notChecked,
        coverage,
        answered,
        failOn,
        facts,
        sources);
  }

  /** The same review with the files that it rests on. */
  public Review from(List<SourceText> files) {
    return new Review(
        file,
        title,
        revision,
        modules,
        problems,
        findings,
        notChecked,
        coverage,
        accepted,
        failOn,
        facts,
        files);
  }

  /**
   * Whether there was a job to review; of none nothing is to be said but what could not be read.
   */
  public boolean hasJob() {
    return problems.isEmpty() || !coverage.isEmpty();
  }
}
