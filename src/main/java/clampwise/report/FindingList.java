package clampwise.report;

import clampwise.facts.OtherCores;
import clampwise.finding.Finding;
import clampwise.finding.Severity;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The findings of a review as a numbered list, by severity and place. */
final class FindingList {

  private static final int INDENT = 2;

  private final Sheet sheet;

  /** A list onto a page. */
  FindingList(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Writes all findings; the entries are made on all cores. */
  void write(List<Finding> findings) {
    Followers followers = Followers.of(findings);
    List<Map<String, List<Finding>>> bySeverity = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      bySeverity.add(byPlace(severity, followers.leading()));
    }
    Iterator<Sheet> entries = entries(bySeverity, followers).iterator();
    for (Severity severity : Severity.values()) {
      write(severity, bySeverity.get(severity.ordinal()), entries);
    }
  }

  private void write(
      Severity severity, Map<String, List<Finding>> byPlace, Iterator<Sheet> entries) {
    int count = byPlace.values().stream().mapToInt(List::size).sum();
    if (count > 0) {
      sheet.heading(FindingText.role(severity), plural(severity), count);
    }
    byPlace.forEach(
        (place, findings) -> {
          sheet.gap();
          sheet.prose(INDENT, Role.HEADING, place);
          findings.forEach(unread -> add(entries.next()));
        });
  }

  private void add(Sheet entry) {
    sheet.gap();
    sheet.add(entry);
  }

  private List<Sheet> entries(List<Map<String, List<Finding>>> bySeverity, Followers followers) {
    Citations citations = Citations.packed();
    List<Supplier<Sheet>> entries = new ArrayList<>();
    for (Map<String, List<Finding>> places : bySeverity) {
      for (List<Finding> findings : places.values()) {
        for (Finding finding : findings) {
          int number = entries.size() + 1;
          List<Finding> after = followers.after(finding);
          entries.add(() -> entry(number, finding, after, citations));
        }
      }
    }
    return OtherCores.all(entries);
  }

  private Sheet entry(int number, Finding finding, List<Finding> after, Citations citations) {
    Sheet entry = sheet.another();
    new FindingText(entry, citations).write(number, finding, after);
    return entry;
  }

  private static String plural(Severity severity) {
    return switch (severity) {
      case ERROR -> "Errors";
      case WARNING -> "Warnings";
      case NOTE -> "Notes";
    };
  }

  /** Findings by the first part of their subject, in the order of the review. */
  private static Map<String, List<Finding>> byPlace(Severity severity, List<Finding> findings) {
    Map<String, List<Finding>> places = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (finding.severity() == severity) {
        String place = FirstPart.of(finding.cause());
        places.computeIfAbsent(place, unseen -> new ArrayList<>()).add(finding);
      }
    }
    return places;
  }
}
