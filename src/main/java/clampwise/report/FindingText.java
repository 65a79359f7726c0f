package clampwise.report;

import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Finding;
import clampwise.finding.Place;
import clampwise.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/** One finding as an entry of the reviewer's list. */
final class FindingText {

  /** Places printed before the rest is only counted. */
  private static final int PLACES_SHOWN = 3;

  private static final int MARK = 2;
  private static final int BODY = 6;

  private final Sheet sheet;

  FindingText(Sheet sheet) {
    this.sheet = sheet;
  }

  void write(int number, Finding finding) {
    sheet.marked(MARK, mark(number), role(finding.severity()), finding.title());
    sheet.whole(BODY, Role.PLACE, finding.at().toString());
    sheet.prose(BODY, Role.PLAIN, finding.message());
    sheet.labelled(BODY, "why", finding.reason());
    sheet.labelled(BODY, "remedy", finding.remedy());
    sheet.labelled(BODY, "basis", basis(finding.basis()));
    writePlaces(finding);
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

  private static String basis(List<Basis> basis) {
    List<String> texts = new ArrayList<>();
    for (Basis one : basis) {
      texts.add(one.detail().isEmpty() ? one.key() : one.detail());
    }
    return String.join("; ", texts);
  }

  private void writePlaces(Finding finding) {
    List<Place> places = finding.places();
    if (places.size() < 2) {
      return;
    }
    int shown = places.size() <= PLACES_SHOWN + 1 ? places.size() : PLACES_SHOWN;
    for (int i = 0; i < shown; i++) {
      sheet.labelled(BODY, i == 0 ? "places" : "", place(places.get(i), finding));
    }
    if (shown < places.size()) {
      sheet.labelled(BODY, "", "and " + (places.size() - shown) + " more");
    }
  }

  private static String place(Place place, Finding finding) {
    String numbers = place.comparison().map(FindingText::numbers).orElse("");
    String written = place.at().equals(finding.at()) ? "" : ", written at " + place.at();
    return place.subject().path() + numbers + written;
  }

  private static String numbers(Comparison numbers) {
    Shown shown = Shown.of(numbers);
    return ": " + shown.measured() + " against " + shown.limit();
  }
}
