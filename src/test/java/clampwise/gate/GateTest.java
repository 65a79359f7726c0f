package clampwise.gate;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.HouseRule;
import clampwise.finding.Severity;
import clampwise.finding.Weights;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is accepted or known stays apart from what is new, as long as it holds and no longer. */
class GateTest {

  private static final Reviewer REVIEWER = new Reviewer();
  private static final Path JUNIOR = Path.of("examples/barn-junior/job.yaml");
  private static final LocalDate ON = LocalDate.of(2026, 2, 3);
  private static final LocalDate UNTIL = LocalDate.of(2026, 8, 31);

  @TempDir private Path folder;
  private Path job;

  @BeforeEach
  void aRepository() throws IOException {
    Files.createDirectory(folder.resolve(".git"));
    job = folder.resolve("job.yaml");
  }

  static Stream<Path> examples() throws IOException {
    return Jobs.examples();
  }

  private Review pass(LocalDate today) {
    Gate gate = new Gate(today, REVIEWER::ruleIds, any -> Weights.SHIPPED);
    return gate.pass(REVIEWER.review(job), job);
  }

  private static Acceptance acceptance(Finding finding, Optional<String> revision) {
    return new Acceptance(finding, "checked: \"yes\", # 1", "roof engineer", ON, UNTIL, revision);
  }

  private void accept(List<Finding> findings, Optional<String> revision) throws IOException {
    String text = "";
    for (Finding finding : findings) {
      text = acceptance(finding, revision).addTo(text).orElseThrow();
    }
    Files.writeString(DeviationFiles.of(job), text);
  }

  private static Set<FindingName> names(List<Finding> findings) {
    return findings.stream().map(Finding::name).collect(Collectors.toSet());
  }

  private static List<String> rules(Review review) {
    return review.findings().stream().map(Finding::rule).toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyFindingCanBeAcceptedAndIsThenShownAsAccepted(Path example) throws IOException {
    copy(example);
    List<Finding> all = REVIEWER.review(job).findings();
    accept(all, Optional.empty());

    Review review = pass(UNTIL);

    assertThat(review.problems()).isEmpty();
    assertThat(review.findings()).isEmpty();
    assertThat(review.accepted())
        .extracting(one -> one.finding().name().toString())
        .containsExactlyElementsOf(all.stream().map(one -> one.name().toString()).toList());
    assertThat(review.accepted())
        .allSatisfy(one -> assertThat(one.reason()).isEqualTo("checked: \"yes\", # 1"));
  }

  private void copy(Path example) throws IOException {
    try (Stream<Path> files = Files.list(example.getParent())) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
  }

  /** Identity is rule, subject and load case: editing elsewhere changes nothing. */
  @ParameterizedTest
  @MethodSource("examples")
  void movingReorderingAndReformattingChangesNoIdentity(Path example) throws IOException {
    copy(example);
    Review before = REVIEWER.review(job);
    accept(before.findings(), Optional.empty());
    Files.writeString(job, Jobs.rewritten(example));

    Review review = pass(UNTIL);

    assertThat(review.problems()).isEmpty();
    assertThat(names(REVIEWER.review(job).findings())).isEqualTo(names(before.findings()));
    assertThat(review.findings()).isEmpty();
    assertThat(review.accepted()).hasSameSizeAs(before.findings());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void whatIsRecordedIsKnownAndWhatIsSolvedLeavesTheRecord(Path example) throws IOException {
    copy(example);
    Path record = folder.resolve("clampwise-debts.yaml");
    Review before = REVIEWER.review(job);
    write(record, before, false);

    Review known = pass(ON);

    assertThat(known.problems()).isEmpty();
    assertThat(known.findings()).isEmpty();
    assertThat(known.accepted()).hasSameSizeAs(before.findings());
    write(record, before.with(List.of()), false);
    Review left = pass(ON);
    assertThat(left.accepted())
        .allMatch(one -> !Gaps.wouldShow(one.finding().name(), before))
        .hasSizeLessThanOrEqualTo(before.findings().size() / 4);
  }

  private void write(Path record, Review review, boolean adds) throws IOException {
    DebtBook book = DebtBook.open(record, adds, ON);
    book.settle(job, review);
    Files.writeString(record, book.text());
  }

  @Test
  void debtsOfOwnRulesStayInARecordMadeWithoutThoseRules() throws IOException {
    Files.copy(JUNIOR, job);
    Path record = folder.resolve("clampwise-debts.yaml");
    Files.writeString(
        record,
        "recorded: 2026-03-02\ndebts:\n"
            + "  - {job: job.yaml, rule: own-gap, subject: fields.A}\n"
            + "  - {job: job.yaml, rule: module-gap-too-small, subject: fields.Z}\n");
    write(record, REVIEWER.review(job), false);
    assertThat(record).content().contains("own-gap").doesNotContain("fields.Z");
  }

  @Test
  void aNewFindingEntersTheRecordOnlyWhenAskedTo() throws IOException {
    Files.copy(JUNIOR, job);
    Path record = folder.resolve("clampwise-debts.yaml");
    Review all = REVIEWER.review(job);
    write(record, all.with(all.findings().subList(1, all.findings().size())), false);
    write(record, all, false);
    assertThat(names(pass(ON).findings())).containsExactly(all.findings().get(0).name());
    write(record, all, true);
    assertThat(pass(ON).findings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2026-02-01, deviation-not-yet",
    "1970-01-01, deviation-not-yet",
    "2026-09-01, deviation-expired",
    "2999-12-31, deviation-expired"
  })
  void outsideItsTimeADeviationHoldsForNothing(LocalDate today, String rule) throws IOException {
    Files.copy(JUNIOR, job);
    Finding first = REVIEWER.review(job).findings().get(0);
    accept(List.of(first), Optional.empty());

    Review review = pass(today);

    assertThat(review.accepted()).isEmpty();
    assertThat(names(review.findings())).contains(first.name());
    Finding told =
        review.findings().stream().filter(f -> f.rule().equals(rule)).findFirst().orElseThrow();
    assertThat(told.follows()).contains(first.name());
    assertThat(told.at().file()).endsWith("job.accepted.yaml");
  }

  @ParameterizedTest
  @CsvSource({"2026-02-02", "2026-02-03", "2026-08-31"})
  void bothItsDaysBelongToItAndTheDayBeforeOfPlacesFurtherWest(LocalDate today) throws IOException {
    Files.copy(JUNIOR, job);
    accept(REVIEWER.review(job).findings(), Optional.empty());
    assertThat(pass(today).findings()).isEmpty();
  }

  @Test
  void behindADeviationThatRanOutStandsNoDebt() throws IOException {
    Files.copy(JUNIOR, job);
    Review all = REVIEWER.review(job);
    write(folder.resolve("clampwise-debts.yaml"), all, false);
    accept(all.findings().subList(0, 1), Optional.empty());
    assertThat(pass(ON).accepted()).hasSameSizeAs(all.findings());
    assertThat(pass(UNTIL.plusDays(1)).findings())
        .extracting(Finding::rule)
        .containsExactlyInAnyOrder(all.findings().get(0).rule(), "deviation-expired");
  }

  @Test
  void aRevisionThatTheJobIsNotAtHoldsForNothing() throws IOException {
    Files.copy(JUNIOR, job);
    Review all = REVIEWER.review(job);
    accept(all.findings().subList(0, 1), Optional.of(all.revision() + "1"));
    assertThat(rules(pass(ON))).contains("deviation-of-other-revision");
    accept(all.findings().subList(0, 1), Optional.of(all.revision()));
    assertThat(pass(ON).accepted()).hasSize(1);
  }

  /** A gap that is accepted at 5 mm is not accepted at 4 mm, but at 6 mm. */
  @ParameterizedTest
  @CsvSource({"5 mm, true", "6 mm, true", "4 mm, false", "0.2 in, true"})
  void aNumberThatGotWorseIsOpenAgain(String gap, boolean accepted) throws IOException {
    gap("5 mm");
    Finding small = only("module-gap-too-small");
    accept(List.of(small), Optional.empty());
    gap(gap);

    Review review = pass(ON);

    assertThat(
            review.accepted().stream().anyMatch(one -> one.finding().name().equals(small.name())))
        .isEqualTo(accepted);
    assertThat(rules(review).contains("deviation-outgrown")).isEqualTo(!accepted);
  }

  private void gap(String gap) throws IOException {
    String base = Files.readString(Path.of("rules/base/seam-roof.yaml"));
    String text = base.replaceFirst("(?m)^(    gap:|    midClamp:).*$", "    gap: " + gap);
    assertThat(text).contains("gap: " + gap);
    Files.writeString(job, text);
  }

  private Finding only(String rule) {
    return REVIEWER.review(job).findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void moreplacesThanWereAcceptedAreOpenAgain() throws IOException {
    Files.copy(JUNIOR, job);
    Finding many =
        REVIEWER.review(job).findings().stream()
            .filter(finding -> finding.places().size() > 2)
            .findFirst()
            .orElseThrow();
    String text = acceptance(many, Optional.empty()).addTo("").orElseThrow();
    Files.writeString(DeviationFiles.of(job), text.replaceFirst("places: \\d+", "places: 2"));
    Review review = pass(ON);
    assertThat(names(review.findings())).contains(many.name());
    assertThat(review.findings().stream().map(Finding::message))
        .anyMatch(message -> message.contains("against 2 then"));
  }

  @Test
  void unknownAndUnusedDeviationsAreFindings() throws IOException {
    Files.copy(Path.of("rules/base/seam-roof.yaml"), job);
    Files.writeString(
        DeviationFiles.of(job),
        """
        accepted:
          - {rule: module-gap-to-small, subject: a, reason: r, by: b, on: 2026-01-01, until: 2027-01-01}
          - {rule: module-gap-too-small, subject: a, reason: r, by: b, on: 2026-01-01, until: 2027-01-01}
        """);
    Review review = pass(ON);
    assertThat(rules(review)).containsExactly("deviation-of-unknown-rule", "deviation-unused");
    assertThat(review.findings().get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(review.findings().get(0).remedy()).startsWith("write module-gap-too-small");
  }

  @Test
  void whatCannotBeReadOfADeviationIsAProblem() throws IOException {
    Files.copy(JUNIOR, job);
    Files.writeString(
        DeviationFiles.of(job),
        """
        accepted:
          - {rule: module-gap-too-small, subject: a, raeson: r, by: b, on: 2026-01-01, until: never}
        """);
    Review review = pass(ON);
    assertThat(review.problems()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(review.problems().stream().map(each -> each.nearest().orElse("")))
        .contains("reason");
  }

  @Test
  void aRuleThatCouldNotBeAskedLeavesItsDeviationsAlone() throws IOException {
    Files.writeString(job, "job: Empty\n");
    Files.writeString(
        DeviationFiles.of(job),
        """
        accepted:
          - {rule: module-gap-too-small, subject: a, reason: r, by: b, on: 2026-01-01, until: 2027-01-01}
        """);
    assertThat(rules(pass(ON))).isEmpty();
  }

  @Test
  void aFileThatCannotBeAddedToSafelyIsLeftAlone() {
    Finding finding = REVIEWER.review(JUNIOR).findings().get(0);
    Acceptance acceptance = acceptance(finding, Optional.empty());
    assertThat(acceptance.addTo("accepted: []\n")).isEmpty();
    assertThat(acceptance.addTo("accepted:\n  - {rule: a\n")).isEmpty();
    assertThat(acceptance.inOneLine()).startsWith("- {rule: " + finding.rule());
  }

  @Test
  void theHousesOwnRulesHaveIdsThatNoShippedRuleHas() {
    assertThat(HouseRule.values()).allMatch(rule -> HouseRule.is(rule.id()));
    assertThat(HouseRule.is("module-gap-too-small")).isFalse();
  }
}
