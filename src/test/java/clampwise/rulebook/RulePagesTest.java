package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import clampwise.finding.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The examples on the rule pages are tests of the rules. */
class RulePagesTest {
  private final Rulebook rulebook = Rulebook.builtIn();

  @TestFactory
  Stream<DynamicNode> everyPageIsCompleteAndItsExamplesHold() {
    return RulePages.all().stream()
        .map(page -> dynamicContainer(page.id(), tests(page, PageText.of(page))));
  }

  @Test
  void everyRuleHasAPageAndEveryPageARule() {
    assertThat(RulePages.all())
        .extracting(RulePage::id)
        .containsExactlyInAnyOrderElementsOf(rulebook.cards().stream().map(RuleCard::id).toList());
  }

  @TestFactory
  Stream<DynamicNode> noRuleFindsAnythingInABaseJob() {
    return ExampleJobs.bases().stream()
        .map(base -> dynamicTest(base.getFileName().toString(), () -> findsNothing(base)));
  }

  private void findsNothing(Path base) {
    assertThat(rulebook.judge(ExampleJobs.facts(base)).findings())
        .extracting(finding -> finding.rule() + " " + finding.at() + " " + finding.message())
        .isEmpty();
  }

  private Stream<DynamicNode> tests(RulePage page, PageText text) {
    Stream<DynamicNode> form =
        Stream.of(
            dynamicTest("has the title of its rule", () -> hasTitle(page)),
            dynamicTest("has all headings, none of them empty", () -> hasHeadings(text)),
            dynamicTest("has every kind of example", () -> hasEveryKind(text)));
    Stream<DynamicNode> examples =
        text.examples().stream()
            .map(example -> dynamicTest(example.title(), () -> holds(page.id(), example)));
    return Stream.concat(form, examples);
  }

  private void hasTitle(RulePage page) {
    assertThat(rulebook.cards())
        .filteredOn(card -> card.id().equals(page.id()))
        .extracting(RuleCard::title)
        .containsExactly(page.title());
  }

  private static void hasHeadings(PageText text) {
    assertThat(text.headings()).isEqualTo(PageText.HEADINGS);
    for (String heading : PageText.HEADINGS) {
      assertThat(text.section(heading)).as(heading).isNotEmpty();
    }
  }

  private static void hasEveryKind(PageText text) {
    assertThat(text.examples()).allMatch(e -> PageExample.KINDS.stream().anyMatch(e::isOf));
    for (String kind : PageExample.KINDS) {
      assertThat(text.examples()).as(kind).anyMatch(example -> example.isOf(kind));
    }
    assertThat(text.examples())
        .allMatch(e -> e.isOf("At the limit:") || e.isOf("Fires:") != e.marked().isEmpty());
  }

  private void holds(String rule, PageExample example) {
    Judgement judgement = rulebook.judge(ExampleJobs.facts(example));
    assertThat(ExampleJobs.lines(judgement, rule, example))
        .as("lines of %s with a finding, of %s", example.page(), found(judgement, rule))
        .isEqualTo(example.marked());
  }

  private static List<String> found(Judgement judgement, String rule) {
    return judgement.findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(RulePagesTest::text)
        .toList();
  }

  private static String text(Finding finding) {
    return finding.at() + " " + finding.message();
  }
}
