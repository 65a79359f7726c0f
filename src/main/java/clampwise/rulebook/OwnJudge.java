package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Applies own rules after those that ship; one that breaks off takes nothing else with it. */
final class OwnJudge {
  private final OwnRules own;
  private final Map<String, Engine> joining = new HashMap<>();

  OwnJudge(OwnRules own) {
    this.own = own;
    own.models().stream()
        .flatMap(model -> RuleSet.joiningOneByOne(model).stream())
        .forEach(one -> joining.put(one.getRules().get(0).getName(), Engine.of(List.of(one))));
  }

  /** The cards of rules that ship and of own ones, in order of their ids. */
  List<RuleCard> with(List<RuleCard> shipped) {
    List<RuleCard> cards = new ArrayList<>(own.rules().cards());
    cards.addAll(shipped);
    cards.sort(Comparator.comparing(RuleCard::id));
    return List.copyOf(cards);
  }

  /** Adds to a report what own rules find; gives those that broke off, by their ids. */
  Map<String, Problem> apply(List<Fact> facts, Report report) {
    Map<String, Problem> failed = new TreeMap<>();
    own.rules().single().forEach(rule -> ask(rule, facts, report, failed));
    joining.forEach((id, engine) -> join(id, engine, facts, report, failed));
    return failed;
  }

  @SuppressWarnings("CatchingUnchecked") // a rule may do anything, as it is code
  private void ask(OneFactRule rule, List<Fact> facts, Report report, Map<String, Problem> failed) {
    for (Fact fact : facts) {
      try {
        if (rule.type() == fact.getClass() && rule.finds(fact)) {
          report.add(rule.rule(), fact);
        }
      } catch (RuntimeException | StackOverflowError | LinkageError e) {
        failed.put(rule.rule(), problem(rule.rule(), " for " + fact.subject().path(), e));
        return;
      }
    }
  }

  @SuppressWarnings("CatchingUnchecked") // a rule may do anything, as it is code
  private void join(
      String id, Engine engine, List<Fact> facts, Report report, Map<String, Problem> failed) {
    Report alone = new Report();
    try {
      engine.apply(facts, alone);
      alone.facts(id).forEach(fact -> report.add(id, fact));
    } catch (RuntimeException | StackOverflowError | LinkageError e) {
      failed.put(id, problem(id, "", e));
    }
  }

  private Problem problem(String id, String about, Throwable fault) {
    Span at = own.conditions().getOrDefault(id, Span.startOf(id));
    String found = "a condition that failed" + about + " (" + reason(fault) + ")";
    return Problem.of(at, found, "a condition that holds or not for every fact");
  }

  private static String reason(Throwable fault) {
    Throwable first = fault;
    while (first.getCause() != null) {
      first = first.getCause();
    }
    String message = first.getMessage();
    String name = first.getClass().getSimpleName();
    return message == null ? name : name + ": " + message;
  }
}
