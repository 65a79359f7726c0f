package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import clampwise.facts.Facts;
import clampwise.rulebook.RuleMutants.Mutant;
import clampwise.rulebook.build.RuleErrors;
import clampwise.rulebook.build.RuleFolder;
import clampwise.rulebook.build.RuleText;
import clampwise.rulebook.example.PageExample;
import clampwise.rulebook.example.PageText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A mistake in the left side of a rule changes what some example on its page shows. */
class RuleMutationTest {
  private record Judged(PageExample example, Judgement judgement) {
    boolean notices(Mutant mutant) {
      return !lines(mutant.name()).equals(lines(mutant.rule()));
    }

    private SortedSet<Integer> lines(String rule) {
      return ExampleJobs.lines(judgement, rule, example);
    }
  }

  @TestFactory
  Stream<DynamicNode> everyMutantChangesAnExample() throws IOException, RuleErrors {
    List<RuleText> rules = new RuleFolder(Path.of("rules")).rules();
    List<Mutant> mutants = rules.stream().flatMap(rule -> RuleMutants.of(rule).stream()).toList();
    List<RuleText> texts = new ArrayList<>(rules);
    mutants.forEach(mutant -> texts.add(mutant.text()));
    Rulebook all = InMemoryRules.rulebook(texts);
    Set<String> compiled = all.cards().stream().map(RuleCard::id).collect(Collectors.toSet());
    Map<String, List<Mutant>> byRule =
        mutants.stream()
            .filter(mutant -> compiled.contains(mutant.name()))
            .collect(Collectors.groupingBy(Mutant::rule));
    return rules.stream()
        .map(rule -> dynamicTest(rule.id(), () -> noneSurvives(rule, byRule, all)));
  }

  /** A mutant that does not compile would be noticed by the build, so it is left out. */
  private static Rulebook compile(List<RuleText> rules, List<Mutant> mutants) throws RuleErrors {
    List<RuleText> texts = new ArrayList<>(rules);
    mutants.forEach(mutant -> texts.add(mutant.text()));
    try {
      return InMemoryRules.rulebook(texts);
    } catch (RuleErrors wrong) {
      texts.removeIf(text -> wrong.names(text));
      return InMemoryRules.rulebook(texts);
    }
  }

  @Test
  void mutantsSwapComparisonsAndDropOperands() {
    assertThat(changes("$f : Fit(frameM < minM || frameM > maxM, !fitted)"))
        .containsExactly(
            "'<' to '<='",
            "'||' to '&&'",
            "'>' to '>='",
            "'!' to ''",
            "'frameM < minM ||' to ''",
            "'|| frameM > maxM' to ''",
            "', !fitted' to ''");
  }

  private static List<String> changes(String left) {
    RuleText rule = new RuleText("x/y.drl", "rule \"y\"\nwhen\n  " + left + "\nthen\nend");
    return RuleMutants.of(rule).stream().map(Mutant::change).toList();
  }

  private static void noneSurvives(RuleText rule, Map<String, List<Mutant>> byRule, Rulebook all) {
    List<Judged> examples = judged(rule, all);
    List<Mutant> mutants = byRule.getOrDefault(rule.id(), List.of());
    assertThat(mutants).as("mutants of " + rule.id()).isNotEmpty();
    assertThat(mutants)
        .filteredOn(mutant -> examples.stream().noneMatch(example -> example.notices(mutant)))
        .extracting(Mutant::change)
        .as("changes of %s that no example notices", rule.id())
        .isEmpty();
  }

  private static List<Judged> judged(RuleText rule, Rulebook all) {
    return RulePages.find(rule.id()).stream()
        .flatMap(page -> PageText.of(page).examples().stream())
        .map(example -> judged(example, all))
        .toList();
  }

  private static Judged judged(PageExample example, Rulebook all) {
    Facts facts = ExampleJobs.facts(example);
    return new Judged(example, all.judge(facts));
  }
}
