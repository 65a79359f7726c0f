package clampwise.rulebook;

import clampwise.finding.Severity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pages that explain the rules, as they ship with the program. */
public final class RulePages {
  private RulePages() {}

  /** All pages in order of topic and rule. */
  public static List<RulePage> all() {
    return RuleIndex.lines(RuleIndex.PAGES).stream().map(RulePages::page).toList();
  }

  /** The page of a rule. */
  public static Optional<RulePage> find(String id) {
    return RuleIndex.lines(RuleIndex.PAGES).stream()
        .filter(entry -> entry.split(" ", -1)[1].equals(id))
        .map(RulePages::page)
        .findFirst();
  }

  /** An entry of the index is topic, id and severity. */
  private static RulePage page(String entry) {
    String[] words = entry.split(" ", -1);
    String id = words[1];
    String text = RuleIndex.text(RuleIndex.FOLDER + id + ".md").orElse("");
    return new RulePage(id, words[0], Severity.valueOf(words[2].toUpperCase(Locale.ROOT)), text);
  }
}
