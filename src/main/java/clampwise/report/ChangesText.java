package clampwise.report;

import clampwise.finding.Comparison;
import clampwise.finding.Finding;
import clampwise.gate.Changes;
import clampwise.gate.Changes.Changed;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What became of a job from one revision to another, as a list to read. */
public final class ChangesText {

  private static final int INDENT = 2;
  private static final int BODY = 6;

  private final Sheet sheet;
  private final UnaryOperator<String> place;

  /**
   * A list onto a page.
   *
   * @param place how a place is named, where files were read from a revision
   */
  public ChangesText(Sheet sheet, UnaryOperator<String> place) {
    this.sheet = sheet;
    this.place = place;
  }

  /** Writes all that changed. */
  public void write(String title, Changes changes) {
    sheet.gap();
    sheet.prose(0, Role.HEADING, title);
    layout(changes.layout());
    list("New", changes.fresh());
    list("Worse", changes.worse());
    list("Better", changes.better());
    list("Gone", changes.gone());
    list("Not checked any more (that is not gone)", changes.unknown());
    sheet.gap();
    sheet.prose(INDENT, Role.PLAIN, counts(changes));
  }

  /** How many findings there are of each kind. */
  public static String counts(Changes changes) {
    String unknown =
        changes.unknown().isEmpty()
            ? ""
            : ", " + changes.unknown().size() + " not checked any more";
    return changes.fresh().size()
        + " new, "
        + changes.worse().size()
        + " worse, "
        + changes.better().size()
        + " better, "
        + changes.gone().size()
        + " gone, "
        + changes.unchanged()
        + " unchanged"
        + unknown
        + ".";
  }

  private void layout(List<String> lines) {
    sheet.gap();
    sheet.prose(INDENT, Role.HEADING, "Layout");
    if (lines.isEmpty()) {
      sheet.prose(BODY, Role.PLAIN, "as it was");
    }
    for (String line : lines) {
      sheet.marked(INDENT, "-   ", Role.PLAIN, line);
    }
  }

  private void list(String title, List<Changed> findings) {
    if (findings.isEmpty()) {
      return;
    }
    sheet.gap();
    sheet.prose(INDENT, Role.HEADING, title + " (" + findings.size() + ")");
    for (Changed one : findings) {
      Finding finding = one.finding();
      String accepted = one.accepted() ? ", somebody answers for it" : "";
      String head = finding.severity().word() + accepted + ": " + finding.title();
      sheet.marked(INDENT, "-   ", FindingText.role(finding.severity()), head);
      sheet.whole(BODY, Role.PLACE, place.apply(finding.at().toString()));
      sheet.prose(BODY, Role.PLAIN, finding.message());
      one.before().map(was -> from(was, finding)).ifPresent(t -> sheet.prose(BODY, Role.PLAIN, t));
      sheet.labelled(BODY, "rule", finding.rule());
    }
  }

  /** What it was before. */
  static String from(Finding was, Finding is) {
    String number = was.comparison().map(ChangesText::measured).orElse("");
    String now = is.comparison().map(ChangesText::measured).orElse("");
    String numbers = number.equals(now) ? "" : "was " + number + ", is " + now + "; ";
    Optional<String> severity =
        Optional.of(was.severity().word()).filter(word -> !word.equals(is.severity().word()));
    return severity.map(word -> "was a " + word + "; ").orElse("")
        + numbers
        + Counted.of(was.places().size(), "place")
        + " before, "
        + is.places().size()
        + " now";
  }

  private static String measured(Comparison numbers) {
    Shown shown = Shown.of(numbers);
    return shown.measured() + " against " + shown.limit();
  }
}
