package clampwise.rulebook;

import clampwise.facts.Fact;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.functions.IntrospectableLambda;
import org.drools.model.functions.Predicate1;

/** Finds out which compiled rules look at one fact at a time, and what they ask of it. */
final class OneFactRules {
  private OneFactRules() {}

  /** The rule in its short form; empty if it joins facts or asks what only the engine can tell. */
  static Optional<OneFactRule> of(Rule rule) {
    List<Condition> conditions =
        rule.getView().getSubConditions().stream()
            .filter(condition -> condition.getType() != Condition.Type.CONSEQUENCE)
            .toList();
    if (conditions.size() != 1 || !(conditions.get(0) instanceof Pattern<?> pattern)) {
      return Optional.empty();
    }
    Class<?> type = pattern.getPatternVariable().getType();
    List<Predicate1<Fact>> tests = new ArrayList<>();
    boolean plain =
        pattern.getType() == Condition.Type.PATTERN
            && Modifier.isFinal(type.getModifiers())
            && collect(pattern.getConstraint(), tests);
    return plain
        ? Optional.of(new OneFactRule(rule.getName(), type, List.copyOf(tests)))
        : Optional.empty();
  }

  /** Whether a constraint is made of nothing but tests of the one fact. */
  private static boolean collect(Constraint constraint, List<Predicate1<Fact>> tests) {
    return switch (constraint.getType()) {
      case SINGLE -> collect((SingleConstraint) constraint, tests);
      case MULTIPLE, AND ->
          constraint.getChildren().stream().allMatch(child -> collect(child, tests));
      default -> false;
    };
  }

  private static boolean collect(SingleConstraint constraint, List<Predicate1<Fact>> tests) {
    if (constraint == SingleConstraint.TRUE) {
      return true;
    }
    return constraint.getVariables().length == 1
        && constraint.getPredicate1() instanceof IntrospectableLambda wrapped
        && wrapped.getLambda() instanceof Predicate1<?> test
        && tests.add(ofFacts(test));
  }

  /** Facts of the rule's type are all that it is ever asked about. */
  @SuppressWarnings("unchecked")
  private static Predicate1<Fact> ofFacts(Predicate1<?> test) {
    return (Predicate1<Fact>) test;
  }
}
