package clampwise.rulebook;

import clampwise.rulebook.build.RuleCompiler;
import clampwise.rulebook.build.RuleErrors;
import clampwise.rulebook.build.RuleText;
import java.util.List;

/** Compiles rule texts and loads them at once, without files. */
public final class InMemoryRules {
  private InMemoryRules() {}

  /** A rulebook of just these rules. */
  public static Rulebook rulebook(List<RuleText> rules) throws RuleErrors {
    RuleCompiler.Compiled compiled = new RuleCompiler().compile(rules);
    return Rulebook.of(new RuleClasses(compiled.classes()).models(compiled.models()));
  }
}
