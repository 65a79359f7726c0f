package clampwise.rulebook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleFormTest {
  private static final String GOOD =
      """
      package clampwise.rules.clamps

      global clampwise.rulebook.Report report

      rule "too-tall"
        @severity("error")
      when
        $f : Fit(frameM > maxM, name != "a-b")
      then
        report.found(drools, $f);
      end
      """;

  @Test
  void aRuleThatComparesAndReportsIsFine() {
    assertThat(RuleForm.faults(rule(GOOD))).isEmpty();
  }

  @Test
  void arithmeticOnTheLeftIsRefused() {
    assertThat(RuleForm.faults(rule(GOOD.replace("> maxM", "> maxM * 1.1"))))
        .containsExactly("clamps/too-tall.drl: the left side computes");
  }

  @Test
  void anythingButOneReportOnTheRightIsRefused() {
    assertThat(RuleForm.faults(rule(GOOD.replace("report.", "System.out.println(1); report."))))
        .singleElement()
        .asString()
        .contains("right side");
  }

  @Test
  void nameTopicSeverityAndAttributesAreChecked() {
    String bad =
        GOOD.replace("too-tall\"", "tall\"\n  salience 10")
            .replace("rules.clamps", "rules.roof")
            .replace("\"error\"", "\"grave\"");

    assertThat(RuleForm.faults(rule(bad))).hasSize(4);
  }

  @Test
  void everyRuleKeepsTheForm() throws IOException {
    assertThat(new RuleFolder(Path.of("rules")).rules())
        .allSatisfy(rule -> assertThat(RuleForm.faults(rule)).isEmpty());
  }

  @Test
  void filesOutsideATopicAreNoRules(@TempDir Path root) throws IOException {
    Files.createDirectories(root.resolve("base"));
    Files.writeString(root.resolve("base/x.drl"), GOOD);
    Files.writeString(root.resolve("y.drl"), GOOD);

    assertThat(new RuleFolder(root).rules()).isEmpty();
  }

  private static RuleText rule(String text) {
    return new RuleText("clamps/too-tall.drl", text);
  }
}
