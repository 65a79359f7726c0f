package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.facts.layout.Layout;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Severity;
import clampwise.finding.Subject;
import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.rulebook.build.RuleErrors;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class RulebookTest {
  private static Rulebook rulebook;

  @BeforeAll
  static void compile() throws RuleErrors {
    rulebook =
        InMemoryRules.rulebook(
            List.of(
                GripRules.tooTall("error"),
                GripRules.rule(
                    "frame-far-too-tall", "note", "$f : Grip(frameM > openM, frameM > 0.045)"),
                GripRules.rule(
                    "two-frames-differ",
                    "warning",
                    "$f : Grip($m : frameM, $a : at)\n  Grip(at == $a, frameM < $m)")));
  }

  @Test
  void aFactThatMeetsTheRuleGivesNoFinding() {
    assertThat(judge(Grip.of(3, "R1C1", 0.030, 0.030)).findings()).isEmpty();
  }

  @Test
  void aFindingCarriesBothNumbersReasonRemedyAndPlace() {
    Finding finding = one(judge(Grip.of(3, "R1C1", 0.0321, 0.030)));

    assertThat(finding.rule()).isEqualTo("frame-too-tall");
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.title()).isEqualTo("Frame too tall, says \"the clamp\"");
    assertThat(finding.message())
        .isEqualTo("the clamp opens to 30 mm, the frame is 32.1 mm; also no other");
    assertThat(finding.reason()).isEqualTo("It would not close.");
    assertThat(finding.remedy()).isEqualTo("use another clamp");
    assertThat(finding.comparison()).contains(new Comparison(0.0321, 0.030, Unit.MILLIMETRE));
    assertThat(finding.at()).hasToString("job.yaml:3:5");
  }

  @Test
  void oneCauseIsOneFindingWithTheWorstPlaceFirst() {
    Finding finding =
        one(
            judge(
                Grip.of(3, "R1C1", 0.031, 0.030),
                Grip.of(4, "R1C2", 0.033, 0.030),
                Grip.of(5, "R1C3", 0.032, 0.030)));

    assertThat(finding.cause()).isEqualTo(Subject.of("fields.A"));
    assertThat(finding.message()).contains("33 mm");
    assertThat(finding.places())
        .extracting(place -> place.subject().path())
        .containsExactly("fields.A / R1C2", "fields.A / R1C3", "fields.A / R1C1");
  }

  @Test
  void measuredAndLimitNeverPrintAlikeWhenTheyDiffer() {
    assertThat(one(judge(Grip.of(3, "R1C1", 0.03000001, 0.030))).message())
        .startsWith("the clamp opens to 30 mm, the frame is 30.00001 mm");
  }

  @Test
  void theLimitsSourceIsAddedToTheBasis() {
    Limit limit =
        new Limit("k", 0.03, Unit.MILLIMETRE, "asce-7-22", "7-22", "29.4", "read", "low slopes");
    Grip plain = Grip.of(3, "R1C1", 0.04, 0.03);
    Grip grip =
        new Grip(
            plain.subject(),
            plain.cause(),
            plain.at(),
            Unit.MILLIMETRE,
            0.04,
            0.03,
            Optional.of("MC-40"),
            List.of("MC-41", "MC-42"),
            Optional.of(limit));

    Finding finding = one(judge(grip));

    assertThat(finding.basis())
        .containsExactly(
            Basis.of("practice:clamp-grip", ""),
            Basis.of("asce-7-16", "29.4.4"),
            new Basis("asce-7-22", "7-22", "29.4", "read", "low slopes"));
    assertThat(finding.remedy()).isEqualTo("use MC-40");
    assertThat(finding.message()).endsWith("also MC-41, MC-42");
  }

  @Test
  void findingsComeBySeverityThenPlaceWhateverTheOrderOfFacts() {
    List<Fact> facts = new ArrayList<>();
    for (int line = 1; line <= 60; line++) {
      Grip grip = Grip.of(line, "R1C" + line, 0.03 + line / 2000.0, 0.030);
      facts.add(withOwnCause(grip));
    }
    Judgement first = rulebook.judge(facts(facts, List.of()));
    Collections.shuffle(facts, new Random(7));

    assertThat(rulebook.judge(facts(facts, List.of()))).isEqualTo(first);
    assertThat(first.findings())
        .isSortedAccordingTo((a, b) -> a.severity().compareTo(b.severity()));
    assertThat(first.findings().get(0).at().start().line()).isEqualTo(1);
  }

  @Test
  void coverageCountsMetNotMetAndNotChecked() {
    Missing missing =
        new Missing(
            Grip.class,
            Subject.of("fields.B"),
            "the frame height of module M is not given",
            Span.startOf(Grip.FILE));
    List<Fact> facts =
        List.of(
            Grip.of(1, "a", 0.03, 0.03), Grip.of(2, "b", 0.03, 0.03), Grip.of(3, "c", 0.04, 0.03));

    Judgement judgement = rulebook.judge(facts(facts, List.of(missing)));

    assertThat(judgement.coverage())
        .containsExactly(
            new Coverage("frame-far-too-tall", 3, 0, 1),
            new Coverage("frame-too-tall", 2, 1, 1),
            new Coverage("two-frames-differ", 3, 0, 1));
    assertThat(judgement.notChecked())
        .extracting(NotChecked::rule)
        .containsExactly("frame-far-too-tall", "frame-too-tall", "two-frames-differ");
    assertThat(judgement.notChecked().get(0).reason())
        .isEqualTo("the frame height of module M is not given");
  }

  @Test
  void aRuleThatJoinsFactsSeesThemTogether() {
    Judgement judgement =
        judge(
            Grip.of(1, "a", 0.028, 0.03),
            Grip.of(1, "b", 0.026, 0.03),
            Grip.of(1, "c", 0.025, 0.03));

    assertThat(one(judgement).rule()).isEqualTo("two-frames-differ");
    assertThat(one(judgement).places()).hasSize(2);
  }

  @Test
  void factsOfManyBatchesAreAllJudgedOnce() throws RuleErrors {
    Rulebook single = InMemoryRules.rulebook(List.of(GripRules.tooTall("error")));
    List<Fact> facts = new ArrayList<>();
    for (int i = 0; i < 60_001; i++) {
      facts.add(Grip.of(1 + i, "R1C" + i, i % 2 == 0 ? 0.031 : 0.030, 0.030));
    }

    Judgement judgement = single.judge(facts(facts, List.of()));

    assertThat(judgement.coverage())
        .containsExactly(new Coverage("frame-too-tall", 30_000, 30_001, 0));
    assertThat(one(judgement).places()).hasSize(30_001);
  }

  @Test
  void aRuleThatDoesNotCompileIsNamed() {
    assertThatThrownBy(
            () ->
                InMemoryRules.rulebook(
                    List.of(
                        GripRules.tooTall("error"),
                        GripRules.rule("wrong-word", "error", "$f : Grip(frameHight > openM)"))))
        .isInstanceOf(RuleErrors.class)
        .hasMessageContaining("grips/wrong-word.drl: ")
        .hasMessageContaining("frameHight")
        .hasMessageNotContaining("frame-too-tall.drl");
  }

  @Test
  void aRuleWithoutSeverityIsRefused() {
    assertThatThrownBy(() -> InMemoryRules.rulebook(List.of(GripRules.tooTall("grave"))))
        .hasMessageContaining("frame-too-tall")
        .hasMessageContaining("severity");
  }

  private static Grip withOwnCause(Grip grip) {
    return new Grip(
        grip.subject(),
        grip.subject(),
        grip.at(),
        grip.shown(),
        grip.frameM(),
        grip.openM(),
        grip.fitting(),
        grip.others(),
        grip.limitFrom());
  }

  private static Judgement judge(Fact... facts) {
    return rulebook.judge(facts(List.of(facts), List.of()));
  }

  private static Finding one(Judgement judgement) {
    assertThat(judgement.findings()).hasSize(1);
    return judgement.findings().get(0);
  }

  private static Facts facts(List<Fact> facts, List<Missing> missing) {
    return new Facts(layout(), facts, missing);
  }

  private static Layout layout() {
    Job job =
        new Job(
            new Text("test", Span.startOf(Grip.FILE)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Named.none(),
            Named.none(),
            Named.none(),
            Optional.empty(),
            Named.none(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Unreadable.NOTHING);
    Parts parts =
        new Parts(
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none());
    return new Layout(job, new Catalogue(parts, Named.none()), List.of(), Set.of());
  }
}
