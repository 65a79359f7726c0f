package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import clampwise.facts.Fact;
import clampwise.rulebook.build.RuleFolder;
import clampwise.rulebook.example.PageExample;
import clampwise.rulebook.example.PageText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Rules that look at one fact say the same with and without the engine. */
class OneFactRulesTest {
  private final Rulebook rulebook = Rulebook.builtIn();
  private final Engine engine =
      Engine.of(RuleIndex.lines(RuleIndex.MODELS).stream().map(OneFactRulesTest::model).toList());

  @TestFactory
  Stream<DynamicNode> theEngineFindsTheSameFactsInEveryExample() throws IOException {
    return new RuleFolder(Path.of("rules"))
        .rules().stream().map(rule -> dynamicTest(rule.id(), () -> compare(rule.id())));
  }

  private void compare(String rule) {
    List<PageExample> examples = PageText.of(RulePages.find(rule).orElseThrow()).examples();
    assertThat(examples).isNotEmpty();
    for (PageExample example : examples) {
      List<Fact> facts = ExampleJobs.facts(example).facts();
      Report byEngine = new Report();
      engine.apply(facts, byEngine);
      Report asked = rulebook.ask(facts);
      for (RuleCard card : rulebook.cards()) {
        assertThat(asked.facts(card.id()))
            .as("%s in %s", card.id(), example.title())
            .isEqualTo(byEngine.facts(card.id()));
      }
    }
  }

  @Test
  void theShippedRulesNeedNoEngine() {
    assertThat(rulebook.rules().models()).isEmpty();
    assertThat(rulebook.rules().single()).hasSameSizeAs(rulebook.cards());
  }

  private static Model model(String name) {
    try {
      return (Model) Class.forName(name).getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}
