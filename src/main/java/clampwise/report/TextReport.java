package clampwise.report;

import clampwise.review.Cautions;
import clampwise.review.Review;
import java.util.List;

/**
 * A review as a reviewer's list: what could not be read, the findings by severity and place, what
 * was not checked, and the counts.
 */
public final class TextReport {

  private static final int INDENT = 2;

  private final Sheet sheet;

  /** A report onto a page. */
  public TextReport(Sheet sheet) {
    this.sheet = sheet;
  }

  /** The whole review of one job. */
  public void write(Review review) {
    if (!review.hasJob()) {
      writeMarks(review);
      return;
    }
    writeHead(review);
    writeMarks(review);
    new AcceptedList(sheet).write(review.accepted());
    writeNotChecked(NotCheckedGroup.of(review.notChecked()));
    new SummaryText(sheet).write(review);
  }

  /** Only what has to change, and whether there was anything to review at all. */
  public void writeQuietly(Review review) {
    writeMarks(review);
    if (!review.accepted().isEmpty()) {
      sheet.gap();
      sheet.whole(0, Role.PLACE, review.file());
      sheet.prose(0, Role.PLAIN, AcceptedWords.counts(review.accepted()) + ".");
    }
    if (review.modules() == 0 && review.hasJob()) {
      sheet.gap();
      sheet.whole(0, Role.PLACE, review.file());
      sheet.prose(0, Role.ERROR, SummaryText.NO_MODULE);
    }
  }

  /** Only what has to change: problems of reading and findings. */
  public void writeMarks(Review review) {
    ProblemList.write(review.problems(), sheet);
    new FindingList(sheet).write(review.findings());
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
    sheet.prose(0, Role.HEADING, "Review of " + title(review));
    sheet.whole(0, Role.PLACE, review.file());
  }

  /** What the job is called. */
  static String title(Review review) {
    return review.title().isBlank() ? "a job without a name" : review.title();
  }

  private void writeNotChecked(List<NotCheckedGroup> groups) {
    if (groups.isEmpty()) {
      return;
    }
    sheet.gap();
    sheet.prose(0, Role.HEADING, "Not checked (" + Counted.of(groups.size(), "reason") + ")");
    sheet.prose(INDENT, Role.PLAIN, "What is missing here is not a pass.");
    sheet.gap();
    for (NotCheckedBlock block : NotCheckedBlock.of(groups)) {
      block.write(sheet, INDENT);
    }
  }
}
