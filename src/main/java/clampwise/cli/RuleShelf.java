package clampwise.cli;

import clampwise.finding.Severity;
import java.util.List;
import java.util.Optional;

/** Where the pages of the rules are kept. */
interface RuleShelf {

  /**
   * A rule as the list shows it.
   *
   * @param topic folder of the rule
   * @param id what the rule is called in findings
   */
  record Entry(String topic, String id, Severity severity, String title) {}

  /** All rules, by topic and id. */
  List<Entry> entries();

  /** The page of a rule, in Markdown. */
  Optional<String> page(String id);
}
