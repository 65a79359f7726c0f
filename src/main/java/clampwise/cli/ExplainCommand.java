package clampwise.cli;

import clampwise.finding.HouseRule;
import clampwise.report.MarkdownText;
import clampwise.report.Paint;
import clampwise.report.Role;
import clampwise.report.Sheet;
import clampwise.rulebook.RulePage;
import clampwise.source.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;

/** {@code clampwise explain}: the page of a rule, or the list of all. */
final class ExplainCommand {

  private static final String LEGEND =
      "An example is not a whole job. It changes the complete job that its first line names, a file"
          + " of rules/base where names such as M30 come from: keys that are written replace those"
          + " of that job, ~ takes one away, and all others stay. A line that ends in <- finding is"
          + " where the finding points.";

  private final Console console;
  private final Supplier<List<RulePage>> rules;

  ExplainCommand(Console console, Supplier<List<RulePage>> rules) {
    this.console = console;
    this.rules = rules;
  }

  /** Prints the list for no word, a page for one. */
  int run(List<String> words) {
    Sheet sheet = new Sheet(console.screen().textWidth(), paint());
    if (words.isEmpty()) {
      list(sheet);
    } else {
      new MarkdownText(sheet).write(withLegend(page(words.get(0))));
    }
    console.print(sheet.toString());
    return ExitCode.CLEAR;
  }

  /** Says below the heading of the examples how they are to be read. */
  private static String withLegend(String page) {
    return page.replaceFirst(
        "(?m)^## Examples$", "## Examples\n\n" + Matcher.quoteReplacement(LEGEND));
  }

  private String page(String id) {
    return rules.get().stream()
        .filter(page -> page.id().equals(id))
        .findFirst()
        .map(RulePage::text)
        .or(() -> HouseRule.find(id).map(ExplainCommand::house))
        .orElseThrow(() -> new UsageException(unknown(id)));
  }

  /** What a house asks itself has one page for all. */
  private static String house(HouseRule rule) {
    return "# "
        + rule.title()
        + "\n\n"
        + rule.reason()
        + "\n\nAsked about the files of a house: its"
        + " policy, accepted deviations and known debts. The page of the gate (docs/gate.md) says"
        + " when.\n";
  }

  private String unknown(String id) {
    List<String> ids = new ArrayList<>();
    rules.get().forEach(rule -> ids.add(rule.id()));
    for (HouseRule rule : HouseRule.values()) {
      ids.add(rule.id());
    }
    return "there is no rule "
        + id
        + Hint.of(Nearest.to(id, ids))
        + "; clampwise explain lists all";
  }

  private void list(Sheet sheet) {
    String topic = "";
    for (RulePage rule : rules.get()) {
      if (!rule.topic().equals(topic)) {
        topic = rule.topic();
        sheet.gap();
        sheet.prose(0, Role.HEADING, topic);
      }
      sheet.whole(2, Role.PLACE, rule.id());
      sheet.prose(6, Role.PLAIN, rule.title() + " (" + rule.severity().word() + ")");
    }
    sheet.gap();
    sheet.prose(0, Role.PLAIN, "clampwise explain RULE prints the page of a rule.");
  }

  private Paint paint() {
    return console.screen().coloursByItself(console.environment()) ? new Colours() : Paint.NONE;
  }
}
