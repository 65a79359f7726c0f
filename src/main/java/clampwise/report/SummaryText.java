package clampwise.report;

import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.Followers;
import clampwise.finding.Severity;
import clampwise.review.Review;

/** The counts at the end of a review. */
final class SummaryText {

  /** What is said of a job in which there was nothing to review. */
  static final String NO_MODULE = "No module was reviewed.";

  private static final int INDENT = 2;

  private final Sheet sheet;

  SummaryText(Sheet sheet) {
    this.sheet = sheet;
  }

  void write(Review review) {
    Followers followers = Followers.of(review.findings());
    writeFirst(followers);
    sheet.gap();
    sheet.prose(0, Role.HEADING, "Counts");
    if (review.modules() == 0) {
      sheet.prose(INDENT, Role.ERROR, NO_MODULE);
    }
    sheet.prose(INDENT, Role.PLAIN, findings(review) + following(followers) + ".");
    if (!review.accepted().isEmpty()) {
      sheet.prose(INDENT, Role.PLAIN, AcceptedWords.counts(review.accepted()) + ".");
    }
    if (!review.coverage().isEmpty()) {
      sheet.prose(INDENT, Role.PLAIN, coverage(review) + ".");
    }
    if (!review.problems().isEmpty()) {
      sheet.prose(INDENT, Role.PLAIN, unread(review.problems().size()));
    }
  }

  private void writeFirst(Followers followers) {
    if (!FixFirst.helps(followers)) {
      return;
    }
    sheet.gap();
    sheet.prose(0, Role.HEADING, "Fix first");
    for (Finding finding : FixFirst.of(followers)) {
      String reach = FixFirst.reach(finding, followers);
      String text = finding.title() + " (" + finding.at() + reach + ")";
      sheet.marked(INDENT, "- ", FindingText.role(finding.severity()), text);
    }
  }

  static String following(Followers followers) {
    int count = followers.count();
    return count == 0
        ? ""
        : "; " + count + " of them only " + (count == 1 ? "follows" : "follow") + " from others";
  }

  static String findings(Review review) {
    int[] counts = new int[Severity.values().length];
    review.findings().forEach(finding -> counts[finding.severity().ordinal()]++);
    StringBuilder text = new StringBuilder();
    for (Severity severity : Severity.values()) {
      text.append(text.length() == 0 ? "" : ", ");
      text.append(Counted.of(counts[severity.ordinal()], severity.word()));
    }
    return text.toString();
  }

  static String coverage(Review review) {
    int met = 0;
    int notMet = 0;
    int notChecked = 0;
    for (Coverage rule : review.coverage()) {
      met += rule.met();
      notMet += rule.notMet();
      notChecked += rule.notChecked();
    }
    int reasons = NotCheckedGroup.of(review.notChecked()).size();
    return Counted.of(review.coverage().size(), "rule")
        + (" gave " + Counted.of(met + notMet + notChecked, "answer"))
        + (", one for each part of the job that they look at: " + met + " met, ")
        + (notMet
            + " not met"
            + from(notMet, review.findings().size() + review.accepted().size(), "finding")
            + ", ")
        + (notChecked + " not checked" + from(notChecked, reasons, "reason"));
  }

  private static String from(int answers, int count, String word) {
    return answers == 0 ? "" : " (" + Counted.of(count, word) + ")";
  }

  static String unread(int problems) {
    return Counted.of(problems, "place")
        + " could not be read: what depends on "
        + (problems == 1 ? "it" : "them")
        + " was not reviewed.";
  }
}
