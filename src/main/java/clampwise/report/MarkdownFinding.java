package clampwise.report;

import clampwise.finding.Basis;
import clampwise.finding.Finding;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A finding in Markdown: a row of a table, and at length.
 *
 * @param job the file of the job, which need not be named at each place
 * @param number its number in the printed list
 * @param after what only follows from it
 */
record MarkdownFinding(String job, int number, Finding finding, List<Finding> after) {

  static final String TABLE =
      "| No. | | Place | Found | Remedy |\n| ---: | --- | --- | --- | --- |\n";

  private static final int MOST_IN_CELL = 400;
  private static final int MOST_AT_LENGTH = 2_000;

  /** The row of the table. */
  String row() {
    int places = finding.places().size();
    String found = MarkdownWords.of(finding.message(), MOST_IN_CELL);
    return "| "
        + number
        + " | "
        + finding.severity().word()
        + " | "
        + MarkdownWords.of(place(), MOST_IN_CELL)
        + " | "
        + (places < 2 ? found : found + " (" + places + " places)")
        + " | "
        + MarkdownWords.of(finding.remedy(), MOST_IN_CELL)
        + " |\n";
  }

  private String place() {
    return finding.at().file().equals(job)
        ? "line " + finding.at().start().line()
        : finding.at().toString();
  }

  /** Title, reason, basis, places and what it brings. */
  String atLength(Citations citations) {
    StringBuilder out = new StringBuilder();
    out.append("**").append(number).append(". ").append(words(finding.title())).append("**\n\n");
    item(out, "place", finding.at().toString());
    item(out, "found", finding.message());
    item(out, "why", finding.reason());
    item(out, "remedy", finding.remedy());
    for (Basis basis : finding.basis()) {
      item(out, "basis", citations.text(basis));
    }
    if (finding.places().size() > 1) {
      item(out, "places", String.join("; ", PlaceNames.lines(paths())));
    }
    for (Finding one : after) {
      String text = one.severity().word() + ": " + one.message() + " (" + one.rule() + ")";
      item(out, "brings", text);
    }
    item(out, "rule", finding.rule());
    return out.append('\n').toString();
  }

  private Set<String> paths() {
    Set<String> paths = new LinkedHashSet<>();
    finding.places().forEach(place -> paths.add(place.subject().path()));
    return paths;
  }

  private static void item(StringBuilder out, String label, String text) {
    if (!text.isEmpty()) {
      out.append("- ").append(label).append(": ").append(words(text)).append('\n');
    }
  }

  private static String words(String text) {
    return MarkdownWords.of(text, MOST_AT_LENGTH);
  }
}
