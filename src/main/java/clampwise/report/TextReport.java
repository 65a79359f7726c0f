package clampwise.report;

import clampwise.finding.Finding;
import clampwise.finding.Severity;
import clampwise.review.Review;
import clampwise.source.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A review as a reviewer's list: what could not be read, the findings by severity and place, what
 * was not checked, and the counts.
 */
public final class TextReport {

  private static final int INDENT = 2;
  private static final int BODY = 6;

  private final Sheet sheet;
  private final FindingText entry;
  private int number;

  /** A report onto a page. */
  public TextReport(Sheet sheet) {
    this.sheet = sheet;
    this.entry = new FindingText(sheet);
  }

  /** The whole review of one job. */
  public void write(Review review) {
    writeHead(review);
    writeMarks(review);
    writeNotChecked(NotCheckedGroup.of(review.notChecked()));
    new SummaryText(sheet).write(review);
  }

  /** Only what has to change, and whether there was anything to review at all. */
  public void writeQuietly(Review review) {
    writeMarks(review);
    if (review.modules() == 0) {
      sheet.gap();
      sheet.whole(0, Role.PLACE, review.file());
      sheet.prose(0, Role.ERROR, SummaryText.NO_MODULE);
    }
  }

  /** Only what has to change: problems of reading and findings. */
  public void writeMarks(Review review) {
    number = 0;
    writeProblems(review.problems());
    for (Severity severity : Severity.values()) {
      writeFindings(severity, of(severity, review.findings()));
    }
  }

  /** What holds whatever was found; once, after the last job. */
  public void writeCautions() {
    sheet.gap();
    sheet.prose(0, Role.HEADING, "On the roof");
    for (String caution : Cautions.onTheRoof()) {
      sheet.prose(INDENT, Role.PLAIN, caution);
    }
    sheet.gap();
    sheet.prose(0, Role.PLAIN, Cautions.NO_APPROVAL);
  }

  private void writeHead(Review review) {
    sheet.gap();
    String title = review.title().isBlank() ? "a job without a name" : review.title();
    sheet.prose(0, Role.HEADING, "Review of " + title);
    sheet.whole(0, Role.PLACE, review.file());
  }

  private void writeProblems(List<Problem> problems) {
    if (problems.isEmpty()) {
      return;
    }
    heading(Role.ERROR, "Could not be read", problems.size());
    for (Problem problem : problems) {
      sheet.gap();
      sheet.whole(INDENT, Role.PLACE, problem.at().toString());
      sheet.labelled(BODY, "found", problem.found());
      sheet.labelled(BODY, "wanted", problem.expected());
      sheet.labelled(BODY, "nearest", problem.nearest().orElse(""));
    }
  }

  private void writeFindings(Severity severity, List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    heading(FindingText.role(severity), plural(severity), findings.size());
    byPlace(findings).forEach(this::writePlace);
  }

  private void writePlace(String place, List<Finding> findings) {
    sheet.gap();
    sheet.prose(INDENT, Role.HEADING, place);
    for (Finding finding : findings) {
      sheet.gap();
      number++;
      entry.write(number, finding);
    }
  }

  private void writeNotChecked(List<NotCheckedGroup> groups) {
    if (groups.isEmpty()) {
      return;
    }
    heading(Role.HEADING, "Not checked", groups.size());
    sheet.prose(INDENT, Role.PLAIN, "What is missing here is not a pass.");
    for (NotCheckedBlock block : NotCheckedBlock.of(groups)) {
      block.write(sheet, INDENT);
    }
  }

  private void heading(Role role, String what, int count) {
    sheet.gap();
    sheet.prose(0, role, what + " (" + count + ")");
  }

  private static String plural(Severity severity) {
    return switch (severity) {
      case ERROR -> "Errors";
      case WARNING -> "Warnings";
      case NOTE -> "Notes";
    };
  }

  private static List<Finding> of(Severity severity, List<Finding> findings) {
    List<Finding> chosen = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.severity() == severity) {
        chosen.add(finding);
      }
    }
    return chosen;
  }

  /** Findings by the first part of their subject, in the order of the review. */
  private static Map<String, List<Finding>> byPlace(List<Finding> findings) {
    Map<String, List<Finding>> places = new LinkedHashMap<>();
    for (Finding finding : findings) {
      String place = FirstPart.of(finding.cause());
      places.computeIfAbsent(place, unseen -> new ArrayList<>()).add(finding);
    }
    return places;
  }
}
