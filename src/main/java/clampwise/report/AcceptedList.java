package clampwise.report;

import clampwise.finding.Accepted;
import java.util.List;

/** Findings that somebody answers for, as a list of its own behind what is open. */
final class AcceptedList {

  private static final int INDENT = 2;
  private static final int BODY = 6;

  private final Sheet sheet;

  AcceptedList(Sheet sheet) {
    this.sheet = sheet;
  }

  void write(List<Accepted> accepted) {
    if (accepted.isEmpty()) {
      return;
    }
    sheet.gap();
    sheet.prose(0, Role.HEADING, AcceptedWords.TITLE + " (" + accepted.size() + ")");
    sheet.prose(INDENT, Role.PLAIN, AcceptedWords.MEANING);
    for (Accepted one : accepted) {
      sheet.gap();
      sheet.marked(INDENT, "-   ", FindingText.role(one.finding().severity()), title(one));
      sheet.whole(BODY, Role.PLACE, one.finding().at().toString());
      sheet.prose(BODY, Role.PLAIN, one.finding().message());
      sheet.prose(BODY, Role.PLAIN, one.words());
      sheet.whole(BODY, Role.PLACE, one.at().toString());
      sheet.labelled(BODY, "rule", one.finding().rule());
    }
  }

  private static String title(Accepted one) {
    return one.finding().title() + " (" + one.finding().severity().word() + ")";
  }
}
