package clampwise.report;

import clampwise.facts.OtherCores;
import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.FindingOrder.Group;
import clampwise.finding.Severity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
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
    FindingOrder order = FindingOrder.of(findings);
    Iterator<Sheet> entries = entries(order).iterator();
    Set<Severity> headed = EnumSet.noneOf(Severity.class);
    for (Group group : order.groups()) {
      if (headed.add(group.severity())) {
        heading(group.severity(), order);
      }
      sheet.gap();
      sheet.prose(INDENT, Role.HEADING, group.place());
      group.findings().forEach(unread -> add(entries.next()));
    }
  }

  private void heading(Severity severity, FindingOrder order) {
    int count = 0;
    for (Group group : order.groups()) {
      count += group.severity() == severity ? group.findings().size() : 0;
    }
    sheet.heading(FindingText.role(severity), plural(severity), count);
  }

  private void add(Sheet entry) {
    sheet.gap();
    sheet.add(entry);
  }

  private List<Sheet> entries(FindingOrder order) {
    Citations citations = Citations.packed();
    List<Supplier<Sheet>> entries = new ArrayList<>();
    for (Group group : order.groups()) {
      for (Finding finding : group.findings()) {
        int number = entries.size() + 1;
        List<Finding> after = order.followers().after(finding);
        entries.add(() -> entry(number, finding, after, citations));
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
}
