package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import clampwise.rulebook.example.BaseJobs;
import clampwise.rulebook.example.ExampleFacts;
import clampwise.rulebook.example.PageCheck;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The examples on the rule pages are tests of the rules. */
class RulePagesTest {
  private static final BaseJobs BASES = new BaseJobs(Optional.empty());
  private final Rulebook rulebook = Rulebook.builtIn();

  @TestFactory
  Stream<DynamicNode> everyPageIsCompleteAndItsExamplesHold() {
    return RulePages.all().stream().map(page -> dynamicContainer(page.id(), tests(page)));
  }

  private Stream<DynamicNode> tests(RulePage page) {
    return new PageCheck(rulebook, BASES)
        .of(page).stream()
            .map(
                outcome ->
                    dynamicTest(outcome.what(), () -> assertThat(outcome.failure()).isEmpty()));
  }

  @Test
  void everyRuleHasAPageAndEveryPageARule() {
    assertThat(RulePages.all())
        .extracting(RulePage::id)
        .containsExactlyInAnyOrderElementsOf(rulebook.cards().stream().map(RuleCard::id).toList());
  }

  @Test
  void noRuleThatShipsIsCalledLikeAnOwnOne() {
    assertThat(RulePages.all())
        .extracting(RulePage::id)
        .noneMatch(id -> id.startsWith(OwnRules.PREFIX));
  }

  @TestFactory
  Stream<DynamicNode> noRuleFindsAnythingInABaseJob() {
    assertThat(BaseJobs.shipped()).isNotEmpty();
    return BaseJobs.shipped().stream().map(base -> dynamicTest(base, () -> findsNothing(base)));
  }

  private void findsNothing(String base) {
    assertThat(rulebook.judge(new ExampleFacts(BASES).of(base)).findings())
        .extracting(finding -> finding.rule() + " " + finding.at() + " " + finding.message())
        .isEmpty();
  }
}
