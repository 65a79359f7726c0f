package clampwise.rulebook.build;

import java.util.List;

/** Rules that do not compile. */
public final class RuleErrors extends Exception {
  private static final long serialVersionUID = 1L;

  RuleErrors(List<String> errors) {
    super(String.join("\n", errors));
  }
}
