package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.rulebook.RulePages;
import clampwise.rulebook.own.OwnFolderCopy;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Own rules run where the person at the keyboard names them, and nowhere else. */
class OwnRulesCommandTest {
  private static final String GAP = "clamps/own-gap-below-15-mm.drl";

  @TempDir private Path home;
  private final Map<String, String> environment = new HashMap<>();
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private String folder;
  private String job;

  @BeforeEach
  void aFolderAJobAndAHome() throws IOException {
    environment.put("HOME", home.toString());
    environment.put("XDG_CONFIG_HOME", home.resolve("config").toString());
    environment.put("XDG_CACHE_HOME", home.resolve("cache").toString());
    folder = OwnFolderCopy.below(home).toString();
    job = Files.copy(Path.of("examples/barn/job.yaml"), home.resolve("job.yaml")).toString();
  }

  private int run(String... arguments) {
    out.reset();
    err.reset();
    Console console =
        new Console(InputStream.nullInputStream(), out, err, environment, Screen.NONE);
    return new Clampwise(console, ReviewDesk::new, RulePages::all).run(arguments);
  }

  private String said() {
    return out.toString(UTF_8);
  }

  private void config(String text) throws IOException {
    Path file = home.resolve("config/clampwise/config.yaml");
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  @Test
  void nothingNamedNothingApplied() {
    assertThat(run("review", "--lines", job)).isZero();
    assertThat(said()).doesNotContain("[own-");
  }

  @Test
  void theOptionTheEnvironmentAndTheConfigurationNameAFolder() throws IOException {
    assertThat(run("review", "--lines", "--own-rules", folder, job)).isZero();
    assertThat(said()).contains("[own-gap-below-15-mm]", "[own-fewer-than-six-clamps]");
    environment.put("CLAMPWISE_OWN_RULES", folder);
    run("review", job);
    assertThat(said()).contains("rule    own-gap-below-15-mm", "Own rule: Gap between modules");
    run("review", "--no-own-rules", job);
    assertThat(said()).doesNotContain("own-gap");
    environment.remove("CLAMPWISE_OWN_RULES");
    config("own-rules: " + folder + "\n");
    run("review", job);
    assertThat(said()).contains("rule    own-gap-below-15-mm");
    config("own-rules: ~/our-rules\n");
    run("review", job);
    assertThat(said()).contains("rule    own-gap-below-15-mm");
    config("own-rules: ../../our-rules\n");
    run("review", job);
    assertThat(said()).contains("rule    own-gap-below-15-mm");
  }

  @Test
  void aWrongConfigurationIsSaidAndNothingIsReviewed() throws IOException {
    config("own-rule: " + folder + "\n");
    assertThat(run("review", job)).isEqualTo(2);
    assertThat(err.toString(UTF_8))
        .contains("config.yaml:1:1: unknown key own-rule; expected one of own-rules")
        .contains("the nearest is own-rules");
    config("own-rules: [a]\n");
    assertThat(run("review", job)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("config.yaml:1:12: no folder");
    config("- a\n");
    assertThat(run("review", job)).isEqualTo(2);
    config("own-rules: nowhere\n");
    assertThat(run("review", job)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("own-rules of the configuration: there is no folder");
    config("");
    assertThat(run("review", job)).isZero();
  }

  @Test
  void aFolderThatIsNoneOrEmptyIsAnError() throws IOException {
    assertThat(run("review", "--own-rules", home.resolve("no").toString(), job)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("--own-rules: there is no folder");
    String empty = Files.createDirectories(home.resolve("empty")).toString();
    assertThat(run("review", "--own-rules", empty, job)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("holds no rule; see docs/own-rules.md");
    assertThat(run("review", "--own-rules", folder, "--no-own-rules", job)).isEqualTo(2);
  }

  @Test
  void aFileThatWouldBePassedOverIsSaid() throws IOException {
    Path topic = Path.of(folder).resolve("clamps");
    Files.writeString(topic.resolve("own-astray.md"), "# Astray\n");
    Files.writeString(topic.resolve("own-other.DRL"), "rule \"own-other\" end\n");
    assertThat(run("review", "--own-rules", folder, job)).isEqualTo(2);
    assertThat(err.toString(UTF_8))
        .contains("own-astray.md:1:1: a page without its rule")
        .contains("own-other.DRL:1:1: an ending in capitals");
  }

  /**
   * Whatever a repository brings along: its job, its policy, its folders, its own configuration.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {"own-rules", "own-rule", "rules-folder", "rules", "include", "extends", "config"})
  void noKeyOfAJobOrOfAPolicyNamesAFolder(String key) throws IOException {
    Files.writeString(Path.of(job), key + ": our-rules\n", java.nio.file.StandardOpenOption.APPEND);
    Files.writeString(home.resolve("clampwise-policy.yaml"), key + ": our-rules\n");
    for (String name : new String[] {"config.yaml", "clampwise/config.yaml", ".clampwise.yaml"}) {
      Path file = home.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, "own-rules: " + folder + "\n");
    }

    assertThat(run("review", "--lines", job)).isEqualTo(2);

    assertThat(said()).doesNotContain("[own-").contains("\"" + key + "\"");
    assertThat(home.resolve("cache")).doesNotExist();
  }

  @Test
  void aBaseFolderThatIsNotAbsoluteIsPassedOver() throws IOException {
    config("own-rules: " + folder + "\n");
    Path here = Path.of("").toAbsolutePath();
    environment.put("XDG_CONFIG_HOME", here.relativize(home.resolve("config")).toString());

    assertThat(run("review", "--lines", job)).isZero();
    assertThat(said()).doesNotContain("[own-");

    environment.put("XDG_CACHE_HOME", here.relativize(home.resolve("cache")).toString());
    run("review", "--lines", "--own-rules", folder, job);
    assertThat(err.toString(UTF_8)).contains("they cannot be kept: there is no folder for it");
    assertThat(home.resolve("cache")).doesNotExist();
  }

  @Test
  void aWrongRuleLeavesAllOthersAtWorkAndTheRunAnswersTwo() throws IOException {
    OwnFolderCopy.change(Path.of(folder, GAP), "gapM <", "gapMm <");
    Path sarif = home.resolve("a.sarif");

    int code = run("review", "--lines", "--own-rules", folder, "--report", sarif.toString(), job);

    assertThat(code).isEqualTo(2);
    assertThat(err.toString(UTF_8))
        .contains("own rule left out: " + folder + "/" + GAP + ":19:18: no gapMm")
        .contains("nearest: gapM");
    assertThat(said()).contains("[own-fewer-than-six-clamps]").doesNotContain("[own-gap");
    JsonNode run = new ObjectMapper().readTree(sarif.toFile()).at("/runs/0");
    assertThat(run.at("/invocations/0/exitCode").asInt()).isEqualTo(2);
    assertThat(run.at("/invocations/0/toolConfigurationNotifications/0/message/text").asText())
        .startsWith("no gapMm");
  }

  @Test
  void aConditionThatBreaksOffIsToldWithItsPlace() throws IOException {
    OwnFolderCopy.change(Path.of(folder, GAP), "gapM < 0.015", "module.substring(999) == \"x\"");

    assertThat(run("review", "--own-rules", folder, job)).isEqualTo(2);

    assertThat(said())
        .contains(GAP + ":19:3")
        .contains("a condition that failed for fields.A")
        .contains("rule    own-fewer-than-six-clamps")
        .doesNotContain("rule    own-gap-below-15-mm");
  }

  @Test
  void aRuleMayJoinFactsAndBreakOffThereToo() throws IOException {
    String left = "$c : ClampsOnModule($m : module, clamps < 6)\n  $f : ModuleGap(module == $m)";
    OwnFolderCopy.change(Path.of(folder, GAP), "$f : ModuleGap(gapM < 0.015)", left);
    OwnFolderCopy.change(
        Path.of(folder, GAP),
        "import clampwise.facts.clamps.ModuleGap",
        "import clampwise.facts.clamps.ModuleGap\nimport clampwise.facts.clamps.ClampsOnModule");
    assertThat(run("review", "--lines", "--own-rules", folder, job)).isZero();
    assertThat(said()).contains("[own-gap-below-15-mm]");
    OwnFolderCopy.change(
        Path.of(folder, GAP), "(module == $m)", "(module == $m, module.substring(999) == \"x\")");
    assertThat(run("review", "--lines", "--own-rules", folder, job)).isEqualTo(2);
    assertThat(said())
        .contains("a condition that failed")
        .contains("[own-fewer-than-six-clamps]")
        .doesNotContain("[own-gap-below-15-mm]");
  }

  @Test
  void everyReportNamesThemAsOwn() throws IOException {
    for (String ending : new String[] {"html", "sarif", "xml", "json", "md", "csv"}) {
      String report = home.resolve("r." + ending).toString();
      run("review", "--own-rules", folder, "--report", report, job);
      assertThat(Path.of(report)).content().contains("Own rule: Gap", "own-gap-below-15-mm");
    }
    JsonNode rules =
        new ObjectMapper()
            .readTree(home.resolve("r.sarif").toFile())
            .at("/runs/0/tool/driver/rules");
    assertThat(rules)
        .anySatisfy(
            rule -> {
              assertThat(rule.path("id").asText()).isEqualTo("own-gap-below-15-mm");
              assertThat(rule.at("/properties/tags/1").asText()).isEqualTo("own");
              assertThat(rule.at("/help/markdown").asText()).contains("15 mm spacer");
            });
  }

  @Test
  void ownPagesAreExplainedAndListed() {
    assertThat(run("explain", "--own-rules", folder, "own-gap-below-15-mm")).isZero();
    assertThat(said()).contains("15 mm spacer");
    assertThat(run("explain", "--own-rules", folder)).isZero();
    assertThat(said()).contains("own-mid-clamp-not-in-stock", "frame-outside-mid-clamp-range");
    assertThat(run("rules", "list", folder)).isZero();
    assertThat(said()).contains("Gap between modules below 15 mm (warning)");
  }

  @Test
  void aPolicyMayWeighAnOwnRuleThatThisRunDoesNotHave() throws IOException {
    Files.writeString(
        home.resolve("clampwise-policy.yaml"),
        "rules:\n  own-gap-below-15-mm: {severity: error, reason: hard lesson}\n");
    assertThat(run("review", "--lines", job)).isZero();
    assertThat(run("review", "--lines", "--own-rules", folder, job)).isEqualTo(1);
    assertThat(said()).contains("error: the gap between");
  }

  @Test
  void theCommandsOfTheGateKnowOwnRulesAndTellWhatIsWrongWithThem() throws IOException {
    String other = home.resolve("other.yaml").toString();
    Files.writeString(
        Path.of(other), Files.readString(Path.of(job)).replace("gap: 12 mm", "gap: 16 mm"));
    assertThat(run("compare", "--own-rules", folder, other, job)).isZero();
    assertThat(said()).contains("own-gap-below-15-mm");
    OwnFolderCopy.change(Path.of(folder, GAP), "gapM <", "gapMm <");
    assertThat(run("compare", "--own-rules", folder, other, job)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("own rule left out", "no gapMm");
    assertThat(said()).doesNotContain("own-gap-below-15-mm");
  }

  @Test
  void rulesTakesAnActionAndAFolder() {
    assertThat(run("rules", "tset", folder)).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("rules takes test or list, not tset").contains("test");
    assertThat(run("rules", "test")).isEqualTo(2);
  }
}
