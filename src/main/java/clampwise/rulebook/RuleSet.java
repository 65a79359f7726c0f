package clampwise.rulebook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;

/**
 * Compiled rules in the form in which they are applied.
 *
 * @param cards what each rule says of itself, in order of their ids
 * @param single the rules that look at one fact at a time
 * @param models the classes that hold a rule which joins facts, and is left to the engine
 */
public record RuleSet(List<RuleCard> cards, List<OneFactRule> single, List<String> models) {

  /** No rules at all. */
  public static final RuleSet NONE = new RuleSet(List.of(), List.of(), List.of());

  /** The rules of compiled models. */
  public static RuleSet of(List<Model> models) {
    List<Rule> rules =
        models.stream()
            .flatMap(model -> model.getRules().stream())
            .sorted(Comparator.comparing(Rule::getName))
            .toList();
    return new RuleSet(
        rules.stream().map(RuleNotes::cardOf).toList(),
        rules.stream().map(OneFactRules::of).flatMap(Optional::stream).toList(),
        models.stream().filter(RuleSet::joins).map(model -> model.getClass().getName()).toList());
  }

  /** Whether a model has rules that are left to the engine. */
  static boolean joins(Model model) {
    return model.getRules().stream().anyMatch(RuleSet::joins);
  }

  /** The rules of a model that are left to the engine, each as a model of its own. */
  static List<Model> joiningOneByOne(Model model) {
    return model.getRules().stream()
        .filter(RuleSet::joins)
        .map(
            rule ->
                (Model)
                    new ModelImpl(model.getName())
                        .withRules(List.of(rule))
                        .withGlobals(model.getGlobals()))
        .toList();
  }

  /** The part of a model that is left to the engine. */
  static Model joining(Model model) {
    return new ModelImpl(model.getName())
        .withRules(model.getRules().stream().filter(RuleSet::joins).toList())
        .withGlobals(model.getGlobals());
  }

  private static boolean joins(Rule rule) {
    return OneFactRules.of(rule).isEmpty();
  }
}
