package clampwise.rulebook;

import clampwise.facts.Fact;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Drools;
import org.kie.api.runtime.rule.RuleContext;

/** Where rules report the facts that do not meet them. */
public final class Report {
  private final Map<String, List<Fact>> byRule = new LinkedHashMap<>();

  /**
   * Says that a fact does not meet the rule that is being applied.
   *
   * @param drools the engine's word for the rule at work, which always is a {@link RuleContext}
   */
  public void found(Drools drools, Fact fact) {
    String rule = ((RuleContext) drools).getRule().getName();
    byRule.computeIfAbsent(rule, id -> new ArrayList<>()).add(fact);
  }

  /** The facts that do not meet a rule. */
  List<Fact> facts(String rule) {
    return byRule.getOrDefault(rule, List.of());
  }
}
