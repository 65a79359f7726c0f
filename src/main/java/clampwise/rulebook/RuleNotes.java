package clampwise.rulebook;

import clampwise.finding.Basis;
import clampwise.finding.Severity;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Rule;

/** Reads the annotations of a rule. */
final class RuleNotes {
  private final Rule rule;
  private final Map<String, Object> notes;

  private RuleNotes(Rule rule) {
    this.rule = rule;
    this.notes = rule.getMetaData();
  }

  static RuleCard cardOf(Rule rule) {
    return new RuleNotes(rule).card();
  }

  private RuleCard card() {
    return new RuleCard(
        rule.getName(),
        rule.getPackage().substring(rule.getPackage().lastIndexOf('.') + 1),
        needed("title"),
        severity(),
        needed("judges"),
        find("measured"),
        find("limit"),
        Template.of(needed("message")),
        needed("reason"),
        Template.of(needed("remedy")),
        list("basis").stream().map(RuleNotes::basis).toList(),
        needed("since"),
        list("editions"),
        list("follows"));
  }

  private Severity severity() {
    String word = needed("severity");
    return Arrays.stream(Severity.values())
        .filter(severity -> severity.word().equals(word))
        .findFirst()
        .orElseThrow(() -> wrong("knows no @severity " + word));
  }

  private IllegalStateException wrong(String what) {
    return new IllegalStateException("rule " + rule.getName() + " " + what);
  }

  private String needed(String note) {
    return find(note).orElseThrow(() -> wrong("has no @" + note));
  }

  private Optional<String> find(String note) {
    return Optional.ofNullable(notes.get(note)).map(value -> unquoted(value.toString()));
  }

  private List<String> list(String note) {
    return find(note).stream()
        .flatMap(text -> Arrays.stream(text.split(",")))
        .map(String::strip)
        .filter(item -> !item.isEmpty())
        .toList();
  }

  /** A key, and after a blank the clause if there is one. */
  private static Basis basis(String item) {
    int blank = item.indexOf(' ');
    return blank < 0
        ? Basis.of(item, "")
        : Basis.of(item.substring(0, blank), item.substring(blank + 1).strip());
  }

  /** The engine hands out annotation texts as they were written, quotes and escapes included. */
  static String unquoted(String written) {
    String text = written.strip();
    if (text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")) {
      text = text.substring(1, text.length() - 1).translateEscapes();
    }
    return text;
  }
}
