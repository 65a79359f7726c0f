package clampwise.rulebook;

import clampwise.facts.Fact;
import java.util.List;
import org.drools.model.functions.Predicate1;

/**
 * A rule whose left side looks at one fact at a time, which needs no network of facts.
 *
 * @param rule its id
 * @param type the facts it looks at
 * @param conditions what it asks of a fact, compiled from the rule's text; all must hold
 */
public record OneFactRule(
    String rule, Class<?> type, List<? extends Predicate1<? super Fact>> conditions) {

  /** Whether a fact of its type is what the rule looks for. */
  boolean finds(Fact fact) {
    try {
      for (Predicate1<? super Fact> condition : conditions) {
        if (!condition.test(fact)) {
          return false;
        }
      }
      return true;
    } catch (Exception e) {
      throw new IllegalStateException("rule " + rule + " cannot judge " + fact, e);
    }
  }
}
