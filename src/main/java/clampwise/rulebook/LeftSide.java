package clampwise.rulebook;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.GroupElement;
import org.drools.base.rule.Pattern;
import org.drools.base.rule.RuleConditionElement;
import org.kie.api.definition.rule.Rule;

/** Which fact types the left sides of rules mention, by class name. */
final class LeftSide {
  private LeftSide() {}

  static Set<String> typesOf(List<Rule> rules) {
    return rules.stream().flatMap(LeftSide::types).collect(Collectors.toSet());
  }

  /** Types of rules that look at more than one fact at a time. */
  static Set<String> joinedTypesOf(List<Rule> rules) {
    return typesOf(rules.stream().filter(rule -> types(rule).count() > 1).toList());
  }

  private static Stream<String> types(Rule rule) {
    return types(((RuleImpl) rule).getLhs());
  }

  private static Stream<String> types(RuleConditionElement element) {
    if (element instanceof Pattern pattern) {
      return Stream.of(pattern.getObjectType().getClassName());
    }
    return element instanceof GroupElement group
        ? group.getChildren().stream().flatMap(LeftSide::types)
        : element.getNestedElements().stream().flatMap(LeftSide::types);
  }
}
