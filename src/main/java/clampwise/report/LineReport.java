package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.review.Review;
import clampwise.source.Problem;
import clampwise.source.Span;

/**
 * One line for each problem, finding and missing input, {@code file:line:column: severity: message
 * [rule]}, the form of the GNU coding standards that editors follow.
 */
public final class LineReport {

  private final StringBuilder out;

  /** A report onto a text. */
  public LineReport(StringBuilder out) {
    this.out = out;
  }

  /** Everything the review says. */
  public void write(Review review) {
    writeMarks(review);
    writeAccepted(review);
    for (NotCheckedGroup group : NotCheckedGroup.of(review.notChecked())) {
      String message = "not checked: " + group.reason();
      line(group.at(), "note", message, group.rulesInShort());
    }
  }

  /** Only problems and findings, and whether there was anything to review at all. */
  public void writeQuietly(Review review) {
    writeMarks(review);
    if (!review.accepted().isEmpty()) {
      String counts = AcceptedWords.counts(review.accepted());
      line(Span.startOf(review.file()), "note", counts, "accepted");
    }
    if (review.modules() == 0 && review.hasJob()) {
      line(Span.startOf(review.file()), "note", "no module was reviewed", "not-checked");
    }
  }

  /** Only problems and findings. */
  public void writeMarks(Review review) {
    for (Problem problem : review.problems()) {
      line(problem.at(), "error", ProblemLine.of(problem), "not-readable");
    }
    for (Finding finding : review.findings()) {
      line(finding.at(), finding.severity().word(), message(finding), finding.rule());
    }
  }

  /** What somebody answers for. */
  private void writeAccepted(Review review) {
    for (Accepted one : review.accepted()) {
      Finding finding = one.finding();
      String message = message(finding) + " (" + one.words() + ")";
      line(finding.at(), "note", message, finding.rule());
    }
  }

  private static String message(Finding finding) {
    int places = finding.places().size();
    String message =
        places < 2 ? finding.message() : finding.message() + " (" + places + " places)";
    return finding
        .follows()
        .map(first -> message + " (follows from " + first.rule() + ")")
        .orElse(message);
  }

  private void line(Span at, String severity, String message, String rule) {
    String text = at + ": " + severity + ": " + message + " [" + rule + "]";
    out.append(Harmless.of(text)).append('\n');
  }
}
