package clampwise.rulebook;

import clampwise.MadeByBuild;
import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.finding.Weights;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drools.model.Model;

/**
 * All rules: facts in, findings out. May be shared by several threads.
 *
 * <p>Rules that look at one fact at a time are asked directly, in the form the rule compiler gave
 * them; those that join facts go through the engine, which is loaded only if there are any.
 */
public final class Rulebook {
  private final RuleSet rules;
  private final Optional<Engine> engine;
  private final Components components = new Components();

  private Rulebook(RuleSet rules, List<Model> joining) {
    this.rules = rules;
    this.engine = joining.isEmpty() ? Optional.empty() : Optional.of(engine(joining));
  }

  /** The rules that ship with the program. */
  public static Rulebook builtIn() {
    RuleSet rules = shipped();
    return new Rulebook(rules, rules.models().stream().map(Rulebook::model).toList());
  }

  /** The rules that ship with the program, ready for the first job. */
  public static Rulebook prepared() {
    Rulebook rulebook = builtIn();
    rulebook.engine.ifPresent(Engine::prepare);
    return rulebook;
  }

  /** Rules compiled elsewhere. */
  public static Rulebook of(List<Model> models) {
    RuleSet rules = RuleSet.of(models);
    return new Rulebook(rules, models.stream().filter(RuleSet::joins).toList());
  }

  @MadeByBuild
  private static RuleSet shipped() {
    return RuleSet.of(RuleIndex.lines(RuleIndex.MODELS).stream().map(Rulebook::model).toList());
  }

  /** What each rule says of itself, in order of their ids. */
  public List<RuleCard> cards() {
    return rules.cards();
  }

  RuleSet rules() {
    return rules;
  }

  /** Holds all facts against all rules. */
  public Judgement judge(Facts facts) {
    return judge(facts, Weights.SHIPPED);
  }

  /** Holds all facts against the rules of a house that weighs them in its own way. */
  public Judgement judge(Facts facts, Weights weights) {
    Report report = ask(facts.facts());
    engine.ifPresent(joining -> joining.apply(facts.facts(), report));
    return new Verdict(cards(), weights, components, facts, report).judgement();
  }

  /** Asks the rules that look at one fact at a time. */
  Report ask(List<Fact> facts) {
    Report report = new Report();
    Map<Class<?>, List<Fact>> byType =
        facts.stream().collect(Collectors.groupingBy(Fact::getClass));
    for (OneFactRule rule : rules.single()) {
      for (Fact fact : byType.getOrDefault(rule.type(), List.of())) {
        if (rule.finds(fact)) {
          report.add(rule.rule(), fact);
        }
      }
    }
    return report;
  }

  private static Engine engine(List<Model> models) {
    return Engine.of(models.stream().map(RuleSet::joining).toList());
  }

  private static Model model(String className) {
    try {
      return (Model) Class.forName(className).getDeclaredConstructor().newInstance();
    } catch (ClassNotFoundException
        | NoSuchMethodException
        | InstantiationException
        | IllegalAccessException
        | InvocationTargetException e) {
      throw new IllegalStateException("the compiled rules are incomplete: " + className, e);
    }
  }
}
