package clampwise.report;

import clampwise.source.Problem;
import java.util.List;

/** Problems of reading, as text. */
final class ProblemList {

  private static final int INDENT = 2;
  private static final int BODY = 6;

  private ProblemList() {}

  static void write(List<Problem> problems, Sheet sheet) {
    if (problems.isEmpty()) {
      return;
    }
    sheet.heading(Role.ERROR, "Could not be read", problems.size());
    for (Problem problem : problems) {
      sheet.gap();
      sheet.whole(INDENT, Role.PLACE, problem.at().toString());
      sheet.labelled(BODY, "found", problem.found());
      sheet.labelled(BODY, "wanted", problem.expected());
      sheet.labelled(BODY, "nearest", problem.nearest().orElse(""));
    }
  }
}
