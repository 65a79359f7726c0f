package clampwise.rulebook;

import java.util.List;
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
        .filter(entry -> entry.endsWith("/" + id + ".md"))
        .map(RulePages::page)
        .findFirst();
  }

  private static RulePage page(String entry) {
    int slash = entry.indexOf('/');
    String name = entry.substring(slash + 1);
    String text = RuleIndex.text(RuleIndex.FOLDER + name).orElse("");
    return new RulePage(name.replace(".md", ""), entry.substring(0, slash), text);
  }
}
