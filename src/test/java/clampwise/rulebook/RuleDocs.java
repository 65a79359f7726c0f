package clampwise.rulebook;

import clampwise.finding.Basis;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes the documentation of the rules from their pages and from what they say of themselves. */
record RuleDocs(List<RuleCard> cards, Bibliography references) {

  /** Every file of the documentation by its name. */
  Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    files.put("README.md", index());
    for (RuleCard card : cards) {
      RulePages.find(card.id()).ifPresent(page -> files.put(card.id() + ".md", page(card, page)));
    }
    return files;
  }

  private String index() {
    String rows =
        cards.stream()
            .sorted(Comparator.comparing(RuleCard::topic).thenComparing(RuleCard::id))
            .map(this::row)
            .collect(Collectors.joining());
    return """
        # Rules

        Written from the rules; see [writing a rule](../writing-a-rule.md).

        | topic | rule | finds | severity | rests on |
        |---|---|---|---|---|
        """
        + rows;
  }

  private String row(RuleCard card) {
    return "| %s | [%s](%s.md) | %s | %s | %s |\n"
        .formatted(
            card.topic(), card.id(), card.id(), card.title(), card.severity().word(), basis(card));
  }

  private String page(RuleCard card, RulePage page) {
    String[] parts = page.text().split("\n", 2);
    return """
        %s

        `%s`, %s, since %s%s. Rests on: %s.

        %s
        """
        .formatted(
            parts[0],
            card.id(),
            card.severity().word(),
            card.since(),
            editions(card),
            basis(card),
            parts[1].strip());
  }

  private static String editions(RuleCard card) {
    return card.editions().isEmpty() ? "" : ", holds for " + String.join(", ", card.editions());
  }

  private String basis(RuleCard card) {
    return card.basis().stream().map(this::text).collect(Collectors.joining("; "));
  }

  private String text(Basis basis) {
    String title = references.titles().getOrDefault(basis.key(), "");
    String clause = basis.clause().isEmpty() ? "" : ", " + basis.clause();
    return (title.isEmpty() ? basis.key() : title) + clause;
  }
}
