package clampwise.rulebook;

import clampwise.finding.Severity;

/**
 * The page that explains a rule.
 *
 * @param id id of the rule
 * @param topic folder it stands in
 * @param severity how much what it finds weighs
 * @param text the page in Markdown
 */
public record RulePage(String id, String topic, Severity severity, String text) {
  private static final String HEADING = "# ";

  /** What the page is headed with. */
  public String title() {
    return text.lines()
        .filter(line -> line.startsWith(HEADING))
        .map(line -> line.substring(HEADING.length()).strip())
        .findFirst()
        .orElse(id);
  }
}
