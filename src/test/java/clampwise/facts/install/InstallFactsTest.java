package clampwise.facts.install;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import clampwise.catalogue.TablesReader;
import clampwise.facts.BaseJob;
import clampwise.job.Choice;
import clampwise.job.InstallStep;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Torques, tools, steps and falls, against numbers worked out by hand. */
class InstallFactsTest {

  @Test
  void everyPartWithScrewsIsAskedForItsTorque() {
    assertThat(with("{}").facts(TorqueOnSheet.class))
        .extracting(TorqueOnSheet::part)
        .containsExactly(
            "seam clamp SC-1", "mid clamp MC-1", "end clamp EC-1", "jumper BJ-1", "lug LG-1");
  }

  /** 1 lbf in is 0.112985 N m: 133 lbf in are 15.03 N m, 0.18 % above 15 N m [computed]. */
  @Test
  void aTorqueInAnotherUnitIsTheSameTorque() {
    StatedTorque stated = stated("{torques: {SC-1: 133 lbf in}}", "seam clamp SC-1");

    assertThat(stated.units()).isEmpty();
    assertThat(stated.shown().symbol()).isEqualTo("lbf in");
    assertThat(stated.statedNm()).isCloseTo(15.027, within(0.0005));
    assertThat(stated.offShare()).isCloseTo(0.0018, within(0.00005));
  }

  /** Handbook table 2.10: wire screws of lugs 20 to 35 lbf in, set screws 9 to 20 N m. */
  @Test
  void usualTorquesAreThoseOfTheHandbook() {
    String none = "parts: {seam-clamps: {SC-1: {torque: ~}}, lugs: {LG-1: {torque: ~}}}";
    BaseJob job = BaseJob.with("ready-roof", none);

    assertThat(job.facts(UsualTorque.class)).hasSize(2);
    assertThat(job.facts(UsualTorque.class).get(0).leastNm()).isEqualTo(9);
    assertThat(job.facts(UsualTorque.class).get(0).mostNm()).isEqualTo(20);
    UsualTorque lug = job.facts(UsualTorque.class).get(1);
    assertThat(lug.leastNm()).isCloseTo(20 * 0.112985, within(1e-4));
    assertThat(lug.mostNm()).isCloseTo(35 * 0.112985, within(1e-4));
    assertThat(job.missing(StatedTorque.class))
        .containsExactlyInAnyOrder(
            "the torque of seam clamp SC-1 is not given (torque)",
            "the torque of lug LG-1 is not given (torque)");
  }

  /** 3 rows by 4 columns with two clamps an edge: 4 lines, 32 seam clamps, 16 mid, 16 end. */
  @Test
  void clampsAreCountedInTheLayout() {
    assertThat(with("{}").facts(TorqueLog.class))
        .extracting(TorqueLog::placed)
        .containsExactly(32, 16, 16);
  }

  @Test
  void aModuleLeftOutLeavesOutItsClamps() {
    String omit = "fields: {A: {block: {omit: [R3C4]}}}";

    assertThat(BaseJob.with("ready-roof", omit).facts(TorqueLog.class))
        .extracting(TorqueLog::placed)
        .containsExactly(30, 14, 16);
  }

  @Test
  void aCertificateOfTheYearBeforeIsTwelveMonthsOldAndADayMoreThirteen() {
    String[] days = {"2025-06-05", "2025-06-04"};
    int[] months = {12, 13};
    for (int i = 0; i < days.length; i++) {
      BaseJob job = with("{tools: {TW-1: {certified: " + days[i] + "}}}");
      assertThat(job.only(ToolCertificate.class).months()).isEqualTo(months[i]);
    }
  }

  @Test
  void aCertificateOfTheFutureProvesNothing() {
    BaseJob job = with("{tools: {TW-1: {certified: 2026-06-06}}}");

    assertThat(job.facts(ToolCertificate.class)).isEmpty();
    assertThat(job.missing(ToolCertificate.class))
        .containsExactly("the certificate of tool TW-1 is dated after the work");
  }

  @Test
  void aListOfToolsWithoutTheOneForSetScrewsSaysNothingOfThem() {
    BaseJob job = with("{tools: {TW-1: {kind: hand-tool, tightens: [module-clamps]}}}");

    assertThat(job.facts(SetScrewTool.class)).isEmpty();
    assertThat(job.missing(SetScrewTool.class))
        .containsExactly("no tool is named that tightens the set screws (install: tools)");
    assertThat(job.missing(ToolCertificate.class))
        .containsExactly("no torque tool is named (install: tools)");
  }

  @Test
  void withoutADayOfWorkNoCertificateIsChecked() {
    BaseJob job = with("{begins: ~, ends: ~}");

    assertThat(job.missing(ToolCertificate.class))
        .containsExactly("the day of the work is not given (install: begins)");
  }

  @Test
  void aJobWithoutWorkIsNotCheckedForOneReason() {
    BaseJob job = BaseJob.with("ready-roof", "install: ~");

    for (var type : List.of(StatedTorque.class, StepTaken.class, ModuleLift.class)) {
      assertThat(job.missing(type))
          .containsExactly("the job says nothing about the work on the roof (install)");
    }
  }

  @Test
  void everyStepOfTheTableIsAWordAndEveryWordAStep() {
    assertThat(TablesReader.read("install.yaml").get("steps").rows())
        .extracting(row -> row.word("step"))
        .hasSameElementsAs(Stream.of(InstallStep.values()).map(Choice::word).toList());
  }

  @Test
  void theLeastThatHasToBeMovedIsOutOfOrder() {
    BaseJob job =
        with("{steps: [test-bonds, reference-line, set-clamps, place-modules, check-square]}");

    assertThat(job.facts(StepOrder.class))
        .filteredOn(step -> !step.inOrder())
        .extracting(StepOrder::step, StepOrder::place)
        .containsExactlyInAnyOrder(
            tuple("test the bonds", "behind \"place the modules\""),
            tuple("check the diagonals", "behind \"snap the line of the first row\""));
  }

  @Test
  void stepsOfBothAttachmentsAreAskedWhereARoofHasBoth() {
    String two =
        """
        panels:
          ribs: {kind: trapezoidal, pitch: 12 in}
        planes:
          north: {panel: ribs, slope: 4:12, size: 100 ft x 31 ft, seams: {first: 8 in}}
        fields:
          B: {like: A, plane: north}
        """;

    assertThat(BaseJob.with("ready-roof", two).facts(StepTaken.class))
        .extracting(StepTaken::attachment)
        .contains("seam clamps", "rib brackets");
  }

  private static StatedTorque stated(String install, String part) {
    return with(install).facts(StatedTorque.class).stream()
        .filter(fact -> fact.part().equals(part))
        .findFirst()
        .orElseThrow();
  }

  private static BaseJob with(String install) {
    return BaseJob.with("ready-roof", "install: " + install);
  }
}
