package clampwise.facts.weight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import clampwise.facts.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The weight of an array, and what it asks of the roof. */
class WeightTest {

  private static final double PSF_PA = 47.880;
  private static final String EXPEDITED = "claims: {path: expedited}\n";

  /** Handbook 3.8 [computed]: a module of 21.5 kg weighs 210.8 N; here on 1.722 m by 1.134 m. */
  @Test
  void theModulesOfTheHandbookWeighWhatItSays() {
    ArrayLoad fact = seams("fields: {A: {hardware-mass: 0 kg}}").only(ArrayLoad.class);

    assertThat(fact.loadPa() * 1.722 * 1.134).isCloseTo(210.8, within(0.05));
  }

  /** Hardware of 1 kg a module [memory] stands where the job gives none. */
  @Test
  void hardwareIsCountedWhereNothingIsSaidOfIt() {
    ArrayLoad fact = seams("{}").only(ArrayLoad.class);

    assertThat(fact.madeOf()).isEqualTo("M30 with 1 kg of hardware");
    assertThat(fact.loadPa() * 1.722 * 1.134 / 9.80665).isCloseTo(22.5, within(1e-6));
  }

  @Test
  void theHeaviestTypeOfAFieldGoverns() {
    ArrayLoad fact =
        seams(
                """
                modules: {G: {length: 1722 mm, width: 1134 mm, frame-height: 30 mm, mass: 30 kg}}
                fields: {A: {other-modules: {R2C2: G}}}
                """)
            .only(ArrayLoad.class);

    assertThat(fact.madeOf()).startsWith("G ");
  }

  @Test
  void aDeadLoadAmongTheLoadsStandsInsteadOfMasses() {
    BaseJob job = seams(EXPEDITED + "loads: {dead: 100 Pa}\nmodules: {M30: {mass: ~}}");

    assertThat(job.only(ArrayLoad.class).loadPa()).isEqualTo(100);
    assertThat(job.only(ExpeditedAttachment.class).weightN())
        .isCloseTo(100 * 1.722 * 1.134 / 2, within(1e-6));
  }

  @Test
  void aModuleWithoutMassIsNotWeighed() {
    BaseJob job =
        seams(
            EXPEDITED
                + "modules: {M30: {mass: ~}}\n"
                + "building: {members-checked: ~, roof-dead-load: 3 psf, roof-design-load: 20 psf, lateral-weight: 9 kip}");
    List<Class<? extends Fact>> questions =
        List.of(
            ArrayLoad.class,
            MemberIncrease.class,
            LateralIncrease.class,
            ExpeditedLoad.class,
            ExpeditedAttachment.class);

    assertThat(questions)
        .allSatisfy(
            question ->
                assertThat(job.missing(question))
                    .containsExactly("the mass of module M30 is not given (mass)"));
  }

  /** Handbook 3.8 [computed]: 3 psf on a roof of 3 and 20 psf are 13 %. */
  @Test
  void threePoundsOnTwentyThreeAreThirteenPercent() {
    MemberIncrease fact =
        seams(
                """
                building: {members-checked: no, roof-dead-load: 3 psf, roof-design-load: 20 psf}
                modules: {M30: {length: 6 ft, width: 3 ft, mass: 52 lb}}
                fields: {A: {hardware-mass: 2 lb}}
                """)
            .only(MemberIncrease.class);

    assertThat(fact.loadPa() / PSF_PA).isCloseTo(3, within(1e-4));
    assertThat(fact.increaseShare()).isCloseTo(0.13, within(0.005));
    assertThat(fact.checked()).isFalse();
  }

  @Test
  void anEngineersCheckNeedsNoLoads() {
    BaseJob checked = seams("{}");
    BaseJob silent = seams("building: {members-checked: ~}");

    assertThat(checked.missing(MemberIncrease.class)).isEmpty();
    assertThat(checked.missing(LateralIncrease.class)).isEmpty();
    assertThat(silent.missing(MemberIncrease.class)).containsExactly(Members.UNKNOWN);
    assertThat(silent.missing(LateralIncrease.class)).containsExactly(Members.UNKNOWN);
  }

  /** Inner lines carry half of two modules on two clamps; 22.5 kg weigh 220.6 N. */
  @Test
  void anInnerAttachmentCarriesHalfOfAModule() {
    ExpeditedAttachment fact = seams(EXPEDITED).only(ExpeditedAttachment.class);

    assertThat(fact.weightN()).isCloseTo(220.65 / 2, within(0.01));
  }

  @Test
  void theExpeditedPathIsJudgedOnlyWhereItIsAskedFor() {
    List<Class<? extends Fact>> questions =
        List.of(
            ExpeditedLoad.class,
            ExpeditedAttachment.class,
            ExpeditedSpacing.class,
            ExpeditedGap.class,
            RoofCoverage.class);

    assertThat(questions)
        .allSatisfy(question -> assertThat(seams(EXPEDITED).facts(question)).hasSize(1))
        .allSatisfy(
            question -> assertThat(seams("claims: {path: engineered}").facts(question)).isEmpty());
  }

  /** Twelve modules at 18.43 degrees (4:12, cosine 0.9487, handbook 3.8) over 100 ft by 60 ft. */
  @Test
  void coverageIsThatOfPlanAreas() {
    RoofCoverage fact = seams(EXPEDITED).only(RoofCoverage.class);

    assertThat(fact.arrayM2()).isCloseTo(12 * 1.722 * 1.134 * 0.9487, within(0.001));
    assertThat(fact.coveredShare()).isCloseTo(fact.arrayM2() / (30.48 * 18.288), within(1e-6));
    assertThat(seams(EXPEDITED + "building: {width: ~}").missing(RoofCoverage.class))
        .containsExactly("the plan size of the building is not given (building: length)");
    assertThat(seams(EXPEDITED + "planes: {south: {slope: ~}}").missing(RoofCoverage.class))
        .containsExactly("the slope of plane south is not given (slope)");
  }

  @Test
  void theClearSpaceIsTheTopLessTheFrameElseTheStandoff() {
    String claim = "claims: {live-load-under-array: yes}\n";

    assertThat(seams(claim).only(LiveLoadUnder.class).clearM()).isEqualTo(0.085);
    assertThat(
            seams(claim + "fields: {A: {top-height: 200 mm}}").only(LiveLoadUnder.class).clearM())
        .isEqualTo(0.17);
    assertThat(
            seams(
                    claim
                        + "fields: {A: {top-height: ~}}\nparts: {seam-clamps: {SC-1: {standoff: ~}}}")
                .missing(LiveLoadUnder.class))
        .containsExactly(
            "how far above the roof the modules of field A stand is not given (top-height)");
  }

  /**
   * Handbook 3.9 [computed]: 4 rows of 10 columns, two clamps an edge, 100 attachments, 2.5 each.
   */
  @Test
  void fourRowsOfTenHaveTwoAndAHalfAttachmentsEach() {
    AttachmentsPerModule fact =
        seams("fields: {A: {block: {at: [20 ft, 8 ft], rows: 4, columns: 10}}}")
            .only(AttachmentsPerModule.class);

    assertThat(fact.attachments()).isEqualTo(100);
    assertThat(fact.perModule()).isEqualTo(2.5);
    assertThat(fact.oneRow()).isFalse();
  }

  @Test
  void aPanelTestedWithLessThanAPersonIsNotJudged() {
    String test = "panels: {steel seams: {walk-test: {load: %s, sag: 5 mm, span: 1500 mm}}}";

    assertThat(seams(test.formatted("200 lbf")).missing(WalkTestFit.class))
        .containsExactly("steel seams was tested with less than a person");
    assertThat(seams("{}").missing(WalkTestFit.class))
        .containsExactly(
            "no load test of steel seams in the middle of a span is given (walk-test)");
    assertThat(seams("panels: {steel seams: {substrate: solid-deck}}").missing(WalkTestFit.class))
        .isEmpty();
    WalkTestFit fact = seams(test.formatted("600 lbf")).only(WalkTestFit.class);
    assertThat(fact.sagM()).isCloseTo(0.0025, within(1e-9));
    assertThat(fact.mostM()).isCloseTo(1.5 / 180, within(1e-7));
  }

  @Test
  void snowRetentionThatIsOnlyDrawnIsNotJudged() {
    BaseJob job =
        seams(
            "planes: {south: {obstructions: {guard: {kind: snow-retention, at: [30 ft, 2 ft],"
                + " size: 20 ft x 4 in}}}}");

    assertThat(job.missing(RetentionPlace.class))
        .containsExactly(
            "what snow retention guard is fixed to is not given (planes: south: snow-retention)");
    assertThat(seams("planes: {south: {snow-retention: {on: seams}}}").missing(RetainedSnow.class))
        .containsExactly(
            "whether the loads include the snow held back on plane south is not given (snow-retention)");
  }

  private static BaseJob seams(String over) {
    return BaseJob.with("seam-roof", over);
  }
}
