package clampwise.report;

import clampwise.finding.Severity;
import clampwise.review.Cautions;
import clampwise.review.Review;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A run as a summary in Markdown, short enough for a comment on a merge request: where the room
 * does not suffice, whole findings are left out, those that weigh least first, and that is said.
 */
final class MarkdownReport {

  /** The tightest limit that is common for comments [characters]. */
  static final int MOST = 65_536;

  private static final int MOST_OF_JOBS_LEFT_OUT = 200;

  private MarkdownReport() {}

  static void write(Run run, Appendable out) throws IOException {
    String end = end(run);
    MarkdownRoom room = new MarkdownRoom(MOST - end.length() - MOST_OF_JOBS_LEFT_OUT);
    List<MarkdownJob> jobs = new ArrayList<>();
    for (Review review : run.reviews()) {
      MarkdownJob.of(review, room).ifPresent(jobs::add);
    }
    fill(jobs);
    for (MarkdownJob job : jobs) {
      out.append(job.text());
    }
    int left = run.reviews().size() - jobs.size();
    if (left > 0) {
      out.append("*" + Counted.of(left, "job") + " left out for room.*\n\n");
    }
    out.append(end);
  }

  private static void fill(List<MarkdownJob> jobs) {
    Citations citations = Citations.packed();
    jobs.forEach(MarkdownJob::addProblems);
    for (Severity severity : Severity.values()) {
      jobs.forEach(job -> job.addRows(severity));
    }
    for (Severity severity : Severity.values()) {
      jobs.forEach(job -> job.addDetails(severity, citations));
    }
    jobs.forEach(MarkdownJob::addAccepted);
    jobs.forEach(MarkdownJob::addNotChecked);
  }

  private static String end(Run run) {
    StringBuilder end = new StringBuilder();
    if (run.isFaulty()) {
      end.append("**").append(run.outcome()).append("**\n\n");
    }
    end.append("<details>\n<summary>On the roof</summary>\n\n");
    for (String caution : Cautions.onTheRoof()) {
      end.append("- ").append(MarkdownWords.of(caution)).append('\n');
    }
    end.append("\n</details>\n\n").append(Cautions.NO_APPROVAL).append("\n\n");
    return end.append("clampwise ").append(MarkdownWords.of(run.version())).append('\n').toString();
  }
}
