package clampwise.report;

import clampwise.finding.Finding;
import clampwise.finding.Severity;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;

/** The counts of all jobs of a run, and their sums. */
public final class JobTable {

  /** Of more jobs than these, those in which nothing is wrong are only counted. */
  private static final int MOST_IN_FULL = 40;

  private static final int INDENT = 2;

  private static final List<String> HEADING =
      List.of("unread", "errors", "warnings", "notes", "not checked");

  private final List<Row> rows = new ArrayList<>();
  private int faults;

  private static final String BETWEEN = "  ";

  /** The counts of one job, in the order of the heading. */
  private record Row(String file, int[] counts) {

    boolean isQuiet() {
      return counts[0] + counts[1] + counts[2] == 0;
    }

    /** The counts below their headings, and the file, which is never broken. */
    String line() {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < counts.length; i++) {
        String count = String.valueOf(counts[i]);
        line.append(" ".repeat(Math.max(0, HEADING.get(i).length() - count.length())));
        line.append(count).append(BETWEEN);
      }
      return line + file;
    }
  }

  /** Counts what the review of a job says. */
  public void add(Review review) {
    int[] counts = new int[HEADING.size()];
    counts[0] = review.problems().size();
    for (Finding finding : review.findings()) {
      counts[1 + finding.severity().ordinal()]++;
    }
    counts[1 + Severity.values().length] = NotCheckedGroup.of(review.notChecked()).size();
    rows.add(new Row(review.file(), counts));
  }

  /** Counts a job whose review broke off. */
  public void addFault() {
    faults++;
  }

  /** Writes the table; nothing for a single job. */
  public void write(Sheet sheet) {
    if (rows.size() + faults < 2) {
      return;
    }
    sheet.heading(Role.HEADING, "Jobs", rows.size() + faults);
    sheet.gap();
    sheet.whole(INDENT, Role.PLAIN, String.join(BETWEEN, HEADING) + BETWEEN + "job");
    boolean inFull = rows.size() <= MOST_IN_FULL;
    for (Row row : rows) {
      if (inFull || !row.isQuiet()) {
        sheet.whole(INDENT, Role.PLAIN, row.line());
      }
    }
    sheet.whole(INDENT, Role.PLAIN, new Row("all of them", sums()).line());
    writeLeftOut(inFull, sheet);
  }

  private void writeLeftOut(boolean inFull, Sheet sheet) {
    sheet.gap();
    int quiet = (int) rows.stream().filter(Row::isQuiet).count();
    if (!inFull && quiet > 0) {
      String text = "without errors and warnings: counted, not listed.";
      sheet.prose(INDENT, Role.PLAIN, Counted.of(quiet, "job") + " " + text);
    }
    if (faults > 0) {
      String text = Counted.of(faults, "job") + " not reviewed: a fault of clampwise.";
      sheet.prose(INDENT, Role.ERROR, text);
    }
  }

  private int[] sums() {
    int[] sums = new int[HEADING.size()];
    for (Row row : rows) {
      for (int i = 0; i < sums.length; i++) {
        sums[i] += row.counts()[i];
      }
    }
    return sums;
  }
}
