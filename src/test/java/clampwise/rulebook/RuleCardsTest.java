package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import clampwise.facts.Fact;
import clampwise.finding.Basis;
import clampwise.rulebook.build.RuleFolder;
import clampwise.rulebook.build.RuleText;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;

/** What rules say of themselves is complete and fits the facts they judge. */
class RuleCardsTest {
  private final Rulebook rulebook = Rulebook.builtIn();
  private final Bibliography references = Bibliography.read();

  @TestFactory
  Stream<DynamicNode> everyRuleSaysWhatItJudgesAndWhatItRestsOn() throws IOException {
    return new RuleFolder(Path.of("rules"))
        .rules().stream().map(rule -> dynamicTest(rule.id(), () -> check(rule)));
  }

  private void check(RuleText rule) throws ClassNotFoundException {
    RuleCard card = card(rule.id());
    assertThat(card.topic()).isEqualTo(rule.topic());
    assertThat(List.of(card.title(), card.reason(), card.since())).doesNotContain("");
    Class<?> fact = judged(rule, card);
    assertThat(fact).isAssignableTo(Fact.class).isRecord();
    assertThat(names(fact)).containsAll(named(card));
    assertThat(card.measured().isPresent()).isEqualTo(card.limit().isPresent());
    assertThat(card.basis())
        .isNotEmpty()
        .extracting(Basis::key)
        .allMatch(references::has, "a key of the references")
        .noneMatch(key -> key.startsWith("asce-7-"), "one edition for all sites");
  }

  private RuleCard card(String id) {
    return rulebook.cards().stream().filter(card -> card.id().equals(id)).findFirst().orElseThrow();
  }

  /** The class of that name that the rule imports and matches. */
  private static Class<?> judged(RuleText rule, RuleCard card) throws ClassNotFoundException {
    Matcher imported =
        Pattern.compile("import (clampwise\\.facts\\.[\\w.]*\\." + card.judges() + ")\\s")
            .matcher(rule.text());
    assertThat(imported.find()).as("import of " + card.judges()).isTrue();
    assertThat(rule.text()).contains(": " + card.judges() + "(");
    return Class.forName(imported.group(1));
  }

  private static List<String> names(Class<?> fact) {
    return Arrays.stream(fact.getRecordComponents()).map(RecordComponent::getName).toList();
  }

  private static List<String> named(RuleCard card) {
    return Stream.of(
            card.message().names().stream(),
            card.remedy().names().stream(),
            card.measured().stream(),
            card.limit().stream())
        .flatMap(names -> names)
        .toList();
  }
}
