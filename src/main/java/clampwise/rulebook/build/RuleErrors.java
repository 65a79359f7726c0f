package clampwise.rulebook.build;

import java.util.List;
import java.util.stream.Collectors;

/** Rules that do not compile. */
public final class RuleErrors extends Exception {
  private static final long serialVersionUID = 1L;

  /** One line an error, each beginning with the rule's file where it is known. */
  RuleErrors(List<String> errors) {
    super(String.join("\n", errors));
  }

  /** Whether a rule is among the wrong ones. */
  public boolean names(RuleText rule) {
    return String.valueOf(getMessage())
        .lines()
        .anyMatch(line -> line.startsWith(rule.file() + ": "));
  }

  /** What is said of a rule, one line an error. */
  String about(RuleText rule) {
    String start = rule.file() + ": ";
    return String.valueOf(getMessage())
        .lines()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()))
        .collect(Collectors.joining("\n"));
  }
}
