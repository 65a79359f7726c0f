package clampwise.rulebook;

import clampwise.MadeByBuild;
import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.finding.Weights;
import clampwise.source.Problem;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
  private final Optional<OwnJudge> own;
  private final Components components = new Components();

  private Rulebook(RuleSet rules, Optional<Engine> engine, Optional<OwnJudge> own) {
    this.rules = rules;
    this.engine = engine;
    this.own = own;
  }

  private static Rulebook of(RuleSet rules, List<Model> joining) {
    Optional<Engine> engine = joining.isEmpty() ? Optional.empty() : Optional.of(engine(joining));
    return new Rulebook(rules, engine, Optional.empty());
  }

  /** The rules that ship with the program. */
  public static Rulebook builtIn() {
    RuleSet rules = shipped();
    return of(rules, rules.models().stream().map(Rulebook::model).toList());
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
    return of(rules, models.stream().filter(RuleSet::joins).toList());
  }

  /** The same rules and those of a company's own. */
  public Rulebook with(OwnRules added) {
    return new Rulebook(rules, engine, Optional.of(new OwnJudge(added)));
  }

  @MadeByBuild
  private static RuleSet shipped() {
    return RuleSet.of(RuleIndex.lines(RuleIndex.MODELS).stream().map(Rulebook::model).toList());
  }

  /** What each rule says of itself, in order of their ids. */
  public List<RuleCard> cards() {
    return own.isPresent() ? own.get().with(rules.cards()) : rules.cards();
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
    Map<String, Problem> failed =
        own.isPresent() ? own.get().apply(facts.facts(), report) : Map.of();
    List<RuleCard> sound = failed.isEmpty() ? cards() : without(failed.keySet());
    Judgement judgement = new Verdict(sound, weights, components, facts, report).judgement();
    return failed.isEmpty() ? judgement : judgement.without(List.copyOf(failed.values()));
  }

  private List<RuleCard> without(Set<String> ids) {
    return cards().stream().filter(card -> !ids.contains(card.id())).toList();
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
