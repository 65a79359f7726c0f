package clampwise.rulebook;

import clampwise.facts.Fact;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import org.drools.model.Drools;
import org.kie.api.runtime.rule.RuleContext;

/** Where rules report the facts that do not meet them. */
public final class Report {
  private final Map<String, Set<Fact>> byRule = new HashMap<>();

  /**
   * Says that a fact does not meet the rule that is being applied.
   *
   * @param drools the engine's word for the rule at work, which always is a {@link RuleContext}
   */
  public void found(Drools drools, Fact fact) {
    add(((RuleContext) drools).getRule().getName(), fact);
  }

  void add(String rule, Fact fact) {
    byRule
        .computeIfAbsent(rule, id -> Collections.newSetFromMap(new IdentityHashMap<>()))
        .add(fact);
  }

  /** The facts that do not meet a rule, each once, in no particular order. */
  Set<Fact> facts(String rule) {
    return byRule.getOrDefault(rule, Set.of());
  }
}
