package clampwise.rulebook.build;

import java.util.List;

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
}
