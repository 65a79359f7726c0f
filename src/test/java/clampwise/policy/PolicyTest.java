package clampwise.policy;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Severity;
import clampwise.finding.Threshold;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PolicyTest {

  private static final Path JUNIOR = Path.of("examples/barn-junior/job.yaml");

  @TempDir private Path root;
  private Path inner;
  private Path job;

  @BeforeEach
  void aRepositoryWithAJob() throws IOException {
    Files.createDirectory(root.resolve(".git"));
    inner = Files.createDirectories(root.resolve("county/barn"));
    job = Files.copy(JUNIOR, inner.resolve("job.yaml"));
  }

  private static void policy(Path folder, String text) throws IOException {
    Files.writeString(folder.resolve(PolicyFinder.FILE), text);
  }

  private Review review() {
    return new Reviewer().review(job);
  }

  private List<Finding> by(String rule) {
    return review().findings().stream().filter(one -> one.rule().equals(rule)).toList();
  }

  private List<String> problems() {
    return review().problems().stream()
        .map(each -> each.at().start().line() + ": " + each.found() + near(each))
        .toList();
  }

  private static String near(Problem problem) {
    return problem.nearest().map(word -> " -> " + word).orElse("");
  }

  @Test
  void withoutAPolicyNothingIsAskedBeyondTheRules() {
    Review review = review();
    assertThat(review.failOn()).isEmpty();
    assertThat(new Reviewer().policy(job)).isSameAs(Policy.NONE);
    assertThat(review.problems()).isEmpty();
  }

  @Test
  void innerPoliciesExtendOuterOnes() throws IOException {
    policy(root, "fail-on: warning\nlimits:\n  overhang-most: {value: 0.5 m, reason: outer}\n");
    policy(root.resolve("county"), "fail-on: note\n");
    Policy policy = new Reviewer().policy(job);
    assertThat(policy.problems()).isEmpty();
    assertThat(policy.failOn()).contains(Threshold.NOTE);
    assertThat(policy.limits().byKey().get("overhang-most").si()).isEqualTo(0.5);
    assertThat(policy.sources()).hasSize(2);
    assertThat(policy.written().get("fail-on").orElseThrow().at().file()).contains("county");
  }

  @Test
  void theTopmostPolicyIsTheOneThatSaysSo() throws IOException {
    policy(root, "fail-on: warning\n");
    policy(root.resolve("county"), "top: yes\n");
    assertThat(new Reviewer().policy(job).failOn()).isEmpty();
  }

  @Test
  void theRepositoryIsTheOutermostPlace() throws IOException {
    policy(root, "fail-on: warning\n");
    Files.createDirectory(inner.resolve(".git"));
    assertThat(new Reviewer().policy(job).failOn()).isEmpty();
  }

  @Test
  void aNamedPolicyStandsForAllOthers() throws IOException {
    policy(root, "fail-on: warning\n");
    Path other = Files.writeString(root.resolve("other.yaml"), "fail-on: never\n");
    Policy named = new Reviewer(Optional.of(other)).policy(job);
    assertThat(named.failOn()).contains(Threshold.NEVER);
  }

  @Test
  void aRuleWeighsWhatTheHouseSays() throws IOException {
    assertThat(by("frame-outside-mid-clamp-range").get(0).severity()).isEqualTo(Severity.ERROR);
    policy(root, "rules:\n  frame-outside-mid-clamp-range: {severity: note, reason: tested}\n");
    assertThat(by("frame-outside-mid-clamp-range").get(0).severity()).isEqualTo(Severity.NOTE);
  }

  @Test
  void aRuleThatIsOffIsNotCheckedAndSaysWhy() throws IOException {
    policy(root, "rules:\n  frame-outside-mid-clamp-range: {severity: off, reason: not ours}\n");
    Review review = review();
    assertThat(by("frame-outside-mid-clamp-range")).isEmpty();
    assertThat(review.notChecked())
        .filteredOn(gap -> gap.rule().equals("frame-outside-mid-clamp-range"))
        .extracting(NotChecked::reason)
        .containsExactly("switched off by the policy: not ours");
    assertThat(review.coverage())
        .filteredOn(one -> one.rule().equals("frame-outside-mid-clamp-range"))
        .allMatch(one -> one.met() == 0 && one.notMet() == 0 && one.notChecked() > 0);
  }

  /** 12 mm pass the shipped 0.25 in of ASCE 7-16 29.4.4 and fail 20 mm of a house. */
  @Test
  void aHouseLimitHoldsInPlaceOfTheShippedOneAndGivesItsReason() throws IOException {
    Files.copy(
        Path.of("rules/base/seam-roof.yaml"),
        job,
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertThat(by("module-gap-too-small")).isEmpty();
    policy(root, "limits:\n  module-gap-least: {value: 20 mm, reason: crews set no less}\n");
    Finding small = by("module-gap-too-small").get(0);
    assertThat(small.message()).contains("20 mm");
    assertThat(small.basis())
        .anySatisfy(
            basis -> {
              assertThat(basis.key()).isEqualTo("house-limit");
              assertThat(basis.clause()).contains("clampwise-policy.yaml:2", "crews set no less");
              assertThat(basis.obtained())
                  .isEqualTo("in place of 1/4 in of ASCE-7 29.4.4 (second-hand)");
            });
    policy(root, "limits:\n  module-gap-least: {value: 1 mm, reason: looser}\n");
    assertThat(by("module-gap-too-small")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "utilisation-most, 50, true",
    "utilisation-most, 0.9, false",
    "module-gap-least, 1 mm, true",
    "module-gap-least, 20 mm, false",
    "ifc-2018 pathway-width, 30 in, true",
    "ifc-2018 pathway-width, 48 in, false",
    "panel-hottest, 150 °F, true"
  })
  void aHouseLimitByWhichMoreMayPassIsNeverSilent(String key, String value, boolean said)
      throws IOException {
    policy(root, "limits:\n  " + key + ": {value: \"" + value + "\", reason: our own}\n");
    assertThat(review().problems()).isEmpty();
    assertThat(by("limit-may-let-more-pass"))
        .hasSize(said ? 1 : 0)
        .allSatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.NOTE);
              assertThat(finding.at().start().line()).isEqualTo(2);
              assertThat(finding.message())
                  .contains("sets " + key + " to " + value, "in place of", "our own");
            });
  }

  @Test
  void limitsOfTheFireCodeAndTheTakeOffCanBeSetToo() throws IOException {
    assertThat(HouseLimits.shipped())
        .containsKeys("module-gap-least", "ifc-2018 pathway-width", "spares-usual");
    policy(root, "limits:\n  ifc-2018 pathway-width: {value: 48 in, reason: county}\n");
    assertThat(new Reviewer().policy(job).problems()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fail-onn: note | 1: the unknown key \"fail-onn\" -> fail-on",
        "fail-on: errors | 1: \"errors\" -> error",
        "rules: {gap: {severity: note, reason: r}} | 1: the unknown rule \"gap\"",
        "rules: {module-gap-to-small: {severity: note, reason: r}} | 1: the unknown rule"
            + " \"module-gap-to-small\" -> module-gap-too-small",
        "rules: {module-gap-too-small: {severity: note}} | 1: a rule without reason",
        "rules: {deviation-expired: {severity: off, reason: r}} | 1: \"off\"",
        "limits: {overhang-mos: {value: 1 m, reason: r}} | 1: the unknown limit \"overhang-mos\""
            + " -> overhang-most",
        "documents: {roofplan: required} | 1: the unknown kind of document \"roofplan\""
            + " -> roof-plan",
        "codes: {loads: asce-7-17} | 1: \"asce-7-17\" -> asce-7-16",
        "own-rules: evil | 1: the unknown key \"own-rules\" -> rules"
      })
  void whatIsWrongIsSaidWithItsPlaceAndTheNearestWord(String text, String said) throws IOException {
    policy(root, text + "\n");
    assertThat(problems()).contains(said);
  }

  @Test
  void aLimitOfAnotherKindIsRefused() throws IOException {
    policy(root, "limits: {overhang-most: {value: 3 kN, reason: r}}\n");
    assertThat(problems()).hasSize(1);
    policy(root, "limits: {overhang-most: {value: 3, reason: r}}\n");
    assertThat(problems()).hasSize(1);
  }

  @Test
  void aJobThatNamesNoCodeStandsUnderThatOfThePolicy() throws IOException {
    String text = Files.readString(JUNIOR).replaceAll("(?m)^  codes:.*$", "");
    Files.writeString(job, text);
    policy(root, "codes: {loads: asce-7-22, electrical: nec-2023, fire: ifc-2021}\n");
    Review review = review();
    assertThat(review.problems()).isEmpty();
    assertThat(review.facts().orElseThrow().layout().job().site().orElseThrow().codes())
        .hasValueSatisfying(
            codes -> {
              assertThat(codes.loads().orElseThrow().toString()).isEqualTo("asce-7-22");
              assertThat(codes.loads().orElseThrow().at().file()).endsWith(PolicyFinder.FILE);
              assertThat(codes.fire().orElseThrow().value()).isEqualTo("ifc-2021");
            });
    assertThat(by("code-other-than-policy")).isEmpty();
  }

  @Test
  void aJobUnderAnotherCodeThanThePolicysIsAnError() throws IOException {
    policy(root, "codes: {loads: asce-7-22, fire: oregon}\n");
    assertThat(by("code-other-than-policy"))
        .extracting(Finding::message)
        .satisfiesExactlyInAnyOrder(
            loads -> assertThat(loads).contains("under asce-7-16", "asks for asce-7-22"),
            fire -> assertThat(fire).contains("under ifc-2018", "asks for oregon"));
  }

  @Test
  void aDocumentThatThePolicyAsksForHasToBeListed() throws IOException {
    policy(root, "documents: {structural-letter: required, roof-plan: not-required}\n");
    assertThat(by("document-asked-by-policy"))
        .extracting(one -> one.cause().path())
        .containsExactly("documents / structural letter");
    Files.writeString(
        job,
        Files.readString(JUNIOR) + "\ndocuments: {sheets: {S-1: {kind: structural-letter}}}\n");
    assertThat(by("document-asked-by-policy")).isEmpty();
    policy(inner, "documents: {structural-letter: not-required}\n");
    Files.copy(JUNIOR, job, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertThat(by("document-asked-by-policy")).isEmpty();
  }
}
