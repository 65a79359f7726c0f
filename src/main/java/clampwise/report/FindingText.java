package clampwise.report;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Section;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Finding;
import clampwise.finding.Place;
import clampwise.finding.Severity;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One finding as an entry of the reviewer's list. */
final class FindingText {

  /** Places printed with their numbers; the rest is only named. */
  private static final int PLACES_SHOWN = 3;

  private static final int MARK = 2;
  private static final int BODY = 6;

  private final Sheet sheet;
  private final Citations citations;

  FindingText(Sheet sheet, Citations citations) {
    this.sheet = sheet;
    this.citations = citations;
  }

  /**
   * Writes an entry.
   *
   * @param after what only follows from the finding
   */
  void write(int number, Finding finding, List<Finding> after) {
    sheet.marked(MARK, mark(number), role(finding.severity()), finding.title());
    sheet.whole(BODY, Role.PLACE, finding.at().toString());
    sheet.prose(BODY, Role.PLAIN, finding.message());
    sheet.labelled(BODY, "why", finding.reason());
    sheet.labelled(BODY, "remedy", finding.remedy());
    writeBasis(finding.basis());
    writeWork(finding);
    writePlaces(finding);
    writeAfter(after);
    sheet.labelled(BODY, "rule", finding.rule());
  }

  static Role role(Severity severity) {
    return switch (severity) {
      case ERROR -> Role.ERROR;
      case WARNING -> Role.WARNING;
      case NOTE -> Role.NOTE;
    };
  }

  /** The number of an entry, as wide as the column in front of its body. */
  private static String mark(int number) {
    String digits = number + ".";
    return digits + " ".repeat(Math.max(BODY - MARK - digits.length(), 1));
  }

  private void writeBasis(List<Basis> basis) {
    String label = "basis";
    for (Basis one : basis) {
      sheet.labelled(BODY, label, citations.text(one));
      label = "";
    }
  }

  /** The lines of a calculation that a reader looks for first. */
  private void writeWork(Finding finding) {
    if (finding.chain().isEmpty()) {
      return;
    }
    String label = "work";
    for (Section section : finding.chain().get().sections()) {
      if (section.decides()) {
        Line last = section.lines().get(section.lines().size() - 1);
        sheet.labelled(BODY, label, WorkText.equation(last, section.measure()));
        label = "";
      }
    }
  }

  private void writePlaces(Finding finding) {
    if (finding.places().size() < 2) {
      return;
    }
    Set<String> places = new LinkedHashSet<>();
    boolean alike = finding.places().stream().map(Place::comparison).distinct().count() == 1;
    finding.places().forEach(place -> places.add(place(place, finding, alike)));
    if (places.size() <= PLACES_SHOWN + 1) {
      write("places", places);
    } else if (alike) {
      write("places", PlaceNames.lines(paths(finding.places())));
    } else {
      write("worst", places.stream().limit(PLACES_SHOWN).toList());
      List<Place> others = finding.places();
      write("others", PlaceNames.lines(paths(others.subList(PLACES_SHOWN, others.size()))));
    }
  }

  private static Set<String> paths(List<Place> places) {
    Set<String> paths = new LinkedHashSet<>();
    places.forEach(place -> paths.add(place.subject().path()));
    return paths;
  }

  private void write(String label, Iterable<String> lines) {
    String before = label;
    for (String line : lines) {
      sheet.labelled(BODY, before, line);
      before = "";
    }
  }

  /** What goes away with the finding is not told at length. */
  private void writeAfter(List<Finding> after) {
    String label = "brings";
    for (Finding one : after) {
      String text = one.severity().word() + ": " + one.message() + " (" + one.rule() + ")";
      sheet.labelled(BODY, label, text);
      label = "";
    }
  }

  private static String place(Place place, Finding finding, boolean alike) {
    String numbers = alike ? "" : place.comparison().map(FindingText::numbers).orElse("");
    String written = place.at().equals(finding.at()) ? "" : ", written at " + place.at();
    return place.subject().path() + numbers + written;
  }

  private static String numbers(Comparison numbers) {
    Shown shown = Shown.of(numbers);
    return ": " + shown.measured() + " against " + shown.limit();
  }
}
