package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.Severity;
import clampwise.report.MarkdownRoom.Section;
import clampwise.review.Review;
import clampwise.source.Problem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The summary of one job: what weighs most takes its room first. */
final class MarkdownJob {

  private static final int SECTIONS = 5;

  private static final int MOST_OF_TITLE = 200;
  private static final int MOST_OF_LINE = 400;

  private final Review review;
  private final String head;
  private final List<MarkdownFinding> findings = new ArrayList<>();
  private final Map<Severity, Integer> cut = new EnumMap<>(Severity.class);
  private final Section problems;
  private final Section table;
  private final Section details;
  private final Section accepted;
  private final Section notChecked;

  private MarkdownJob(Review review, FindingOrder order, String head, MarkdownRoom room) {
    this.review = review;
    this.head = head;
    for (FindingOrder.Group group : order.groups()) {
      for (Finding finding : group.findings()) {
        List<Finding> after = order.followers().after(finding);
        findings.add(new MarkdownFinding(review.file(), findings.size() + 1, finding, after));
      }
    }
    problems = room.section("### Could not be read\n\n", "\n");
    table = room.section("### Findings\n\n" + MarkdownFinding.TABLE, "\n");
    details = room.section(fold("Reasons, places and sources"), "</details>\n\n");
    accepted = room.section(fold(AcceptedWords.TITLE), "\n</details>\n\n");
    notChecked =
        room.section(fold("Not checked: what is missing is not a pass"), "\n</details>\n\n");
  }

  /** The summary of a job, if there is room for its head. */
  static Optional<MarkdownJob> of(Review review, MarkdownRoom room) {
    FindingOrder order = FindingOrder.of(review.findings());
    String head = head(review, order);
    return room.take(head.length() + SECTIONS * MarkdownRoom.NOTE)
        ? Optional.of(new MarkdownJob(review, order, head, room))
        : Optional.empty();
  }

  private static String fold(String summary) {
    return "<details>\n<summary>" + summary + "</summary>\n\n";
  }

  /** What the job is called, the counts and what to fix first. */
  private static String head(Review review, FindingOrder order) {
    StringBuilder out = new StringBuilder();
    String title = MarkdownWords.of(TextReport.title(review), MOST_OF_TITLE);
    out.append("## Review of ").append(title).append("\n\n");
    out.append("File: ").append(MarkdownWords.of(review.file(), MOST_OF_TITLE)).append("\n\n");
    if (review.modules() == 0) {
      out.append("**").append(SummaryText.NO_MODULE).append("**\n\n");
    }
    String following = SummaryText.following(order.followers());
    out.append("**").append(SummaryText.findings(review)).append("**").append(following);
    out.append(".\n");
    if (!review.accepted().isEmpty()) {
      out.append("**").append(AcceptedWords.counts(review.accepted())).append("**.\n");
    }
    if (!review.coverage().isEmpty()) {
      out.append(SummaryText.coverage(review)).append(".\n");
    }
    if (!review.problems().isEmpty()) {
      out.append(SummaryText.unread(review.problems().size())).append('\n');
    }
    first(order, out.append('\n'));
    return out.toString();
  }

  private static void first(FindingOrder order, StringBuilder out) {
    if (!FixFirst.helps(order.followers())) {
      return;
    }
    out.append("### Fix first\n\n");
    for (Finding finding : FixFirst.of(order.followers())) {
      String reach = FixFirst.reach(finding, order.followers());
      String number = order.number(finding).map(known -> "No. " + known + ": ").orElse("");
      String title = MarkdownWords.of(finding.title(), MOST_OF_TITLE);
      out.append("- ").append(number).append("**").append(title).append("** (");
      out.append(MarkdownWords.of(finding.at().toString(), MOST_OF_TITLE));
      out.append(reach).append(")\n");
    }
    out.append('\n');
  }

  /** Takes in what could not be read. */
  void addProblems() {
    for (Problem problem : review.problems()) {
      String text = problem.at() + ": " + ProblemLine.of(problem);
      problems.add("- " + MarkdownWords.of(text, MOST_OF_LINE) + "\n");
    }
  }

  /** Takes in the findings of a severity. */
  void addRows(Severity severity) {
    for (MarkdownFinding one : findings) {
      if (one.finding().severity() == severity && !table.add(one.row())) {
        cut.merge(severity, 1, Integer::sum);
      }
    }
  }

  /** Takes in the findings of a severity at length. */
  void addDetails(Severity severity, Citations citations) {
    for (MarkdownFinding one : findings) {
      if (one.finding().severity() == severity) {
        details.add(one.atLength(citations));
      }
    }
  }

  /** Takes in what somebody answers for. */
  void addAccepted() {
    for (Accepted one : review.accepted()) {
      Finding finding = one.finding();
      String text = finding.severity().word() + ": " + finding.message() + " (" + finding.rule();
      String line = text + "); " + one.words() + " (" + one.at() + ")";
      accepted.add("- " + MarkdownWords.of(line, MOST_OF_LINE) + "\n");
    }
  }

  /** Takes in what was not checked. */
  void addNotChecked() {
    for (NotCheckedGroup group : NotCheckedGroup.of(review.notChecked())) {
      String text = group.reason() + " (" + group.at() + "; " + group.rulesInShort() + ")";
      notChecked.add("- " + MarkdownWords.of(text, MOST_OF_LINE) + "\n");
    }
  }

  /** Everything that found room, in the order in which it is read. */
  String text() {
    return head
        + problems.text(Counted.of(problems.cut(), "problem"))
        + table.text(left())
        + details.text("The details of " + Counted.of(details.cut(), "finding"))
        + accepted.text(Counted.of(accepted.cut(), "accepted finding"))
        + notChecked.text(Counted.of(notChecked.cut(), "reason"));
  }

  private String left() {
    List<String> words = new ArrayList<>();
    cut.forEach((severity, count) -> words.add(Counted.of(count, severity.word())));
    return String.join(", ", words);
  }
}
