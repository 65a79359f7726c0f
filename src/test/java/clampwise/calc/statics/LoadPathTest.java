package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.combination.Effect;
import clampwise.calc.combination.SlopeComponents;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadPathTest {

  private static final double PSF_PA = 47.880259;
  private static final double POUND_N = 4.4482216;
  private static final double SLOPE = Math.atan2(4, 12);

  private final Work work = new Work(Measure.METRIC);

  @AfterEach
  void everyLineIsWhatItsFormulaGives() {
    if (!work.lines().isEmpty()) {
      Recomputed.check(work);
    }
  }

  private String lastNote() {
    return work.lines().get(work.lines().size() - 1).note();
  }

  /** Rows of 1,134 mm and 12 mm gap, attachments at 48 in, 30 psf [computed]. */
  @Test
  void tributaryForcesAreThoseOfTheWorkedExample() {
    TributaryLoad load = new TributaryLoad(1.134, 0.012, 1.2192);
    assertThat(load.interior(30 * PSF_PA, work).si()).isCloseTo(2007, within(0.5));
    assertThat(load.edge(30 * PSF_PA, work).si()).isCloseTo(993, within(0.5));
    assertThat(work.lines().get(0).result().si()).isCloseTo(1.397, within(5e-4));
    assertThat(work.lines().get(2).result().si()).isCloseTo(0.691, within(5e-4));
  }

  /** 4:12, module 21.5 kg, snow 1 kPa on 1,722 x 1,134 mm, column of six [computed]. */
  @Test
  void weightAndSnowOnASlopeAreThoseOfTheWorkedExample() {
    Term weight = Term.force("W", "module", 21.5 * 9.80665);
    Effect own = SlopeComponents.onSlope(weight, SLOPE, work);
    Effect snow = SlopeComponents.onPlan(1000, SLOPE).times(1.722 * 1.134);
    assertThat(own.along()).isCloseTo(66.7, within(0.05));
    assertThat(own.normal()).isCloseTo(200.0, within(0.05));
    assertThat(Math.hypot(snow.normal(), snow.along())).isCloseTo(1853, within(0.5));
    assertThat(snow.along()).isCloseTo(586, within(0.5));
    assertThat(snow.normal()).isCloseTo(1757, within(0.5));
    assertThat(6 * (own.along() + snow.along())).isCloseTo(3915, within(0.5));
  }

  /** 520 lbf against 46.6 psf on rows of 1,146 mm, seams at 16 in. */
  @ParameterizedTest
  @CsvSource({
    "520, 2, Attach at every 2 seams or closer.",
    "300, 1, Attach at every seam.",
    "100, 0, Even an attachment at every seam is not enough."
  })
  void theZoneAllowsWholeSeams(double strengthLbf, int seams, String sentence) {
    SpacingAllowed.Zone zone = new SpacingAllowed.Zone(46.6 * PSF_PA, 1.146, 1);
    SpacingAllowed allowed = SpacingAllowed.show(zone, strengthLbf * POUND_N, 0.4064, work);
    assertThat(allowed.lengthM())
        .isCloseTo(strengthLbf * POUND_N / (46.6 * PSF_PA * 1.146), within(1e-12));
    assertThat(allowed.everySeams()).isEqualTo(seams);
    assertThat(lastNote()).isEqualTo(sentence);
  }

  @Test
  void aSpacingOfExactlyThreeSeamsIsThreeSeams() {
    SpacingAllowed.Zone zone = new SpacingAllowed.Zone(1000, 1, 1);
    assertThat(SpacingAllowed.of(zone, 3 * 406.4, 0.4064).everySeams()).isEqualTo(3);
    assertThat(SpacingAllowed.of(zone, 3 * 406.4 - 0.01, 0.4064).everySeams()).isEqualTo(2);
  }

  @Test
  void aContinuousFrameShortensTheSpacing() {
    SpacingAllowed cut = SpacingAllowed.of(new SpacingAllowed.Zone(1000, 1, 1), 900, 0.4);
    SpacingAllowed over = SpacingAllowed.of(new SpacingAllowed.Zone(1000, 1, 1.25), 900, 0.4);
    assertThat(over.lengthM()).isCloseTo(cut.lengthM() / 1.25, within(1e-12));
  }

  /** AISI S100, 24 ga .0239 in, thread .25 in, 65 ksi: 330 lbf, over 3: 110 lbf [memory]. */
  @Test
  void aScrewPullsOutOfTwentyFourGauge() {
    PullOut screw = new PullOut(0.0239 * 0.0254, 0.25 * 0.0254, 65_000 * 144 * PSF_PA);
    Strength<LimitState.Asd> allowable = screw.show(0.85, 3, Source.STATICS, work);
    assertThat(work.lines().get(0).result().si() / POUND_N).isCloseTo(330, within(0.5));
    assertThat(allowable.forceN() / POUND_N).isCloseTo(110, within(0.5));
  }

  /** Dead 3 and live 20 psf, array 3 psf: +13 %, over the 5 % screen; 6 psf remain [computed]. */
  @Test
  void thirteenPercentCallsForACheck() {
    DeadLoadScreen screen = new DeadLoadScreen(3 * PSF_PA, 20 * PSF_PA, 3 * PSF_PA);
    Term most = Term.number("i_1", "greatest increase", 0.05);
    assertThat(screen.show(most, Source.STATICS, work).si()).isCloseTo(0.13, within(0.005));
    assertThat(work.lines().get(1).note()).isEqualTo("Above the screen: the members need a check.");
    assertThat(work.lines().get(2).result().si() / PSF_PA).isCloseTo(6, within(0.05));
  }

  @Test
  void exactlyTheScreenPasses() {
    DeadLoadScreen screen = new DeadLoadScreen(100, 900, 50);
    screen.show(Term.number("i_1", "greatest increase", 0.05), Source.STATICS, work);
    assertThat(work.lines().get(1).note()).isEqualTo("Within the screen.");
  }

  @ParameterizedTest
  @CsvSource({
    "0.009, 0.9, ''",
    "0.01, 1, ''",
    "0.0101, 1.01, Softer than the limit: use walk pads."
  })
  void aPanelSagsAtMostItsShareOfTheSpan(double sagM, double share, String note) {
    ConcentratedLoad panel = new ConcentratedLoad(1.8, 1000, sagM);
    assertThat(panel.show(1000, 180, Source.STATICS, work).si()).isCloseTo(share, within(1e-9));
    assertThat(lastNote()).isEqualTo(note);
  }

  @Test
  void halfTheTestLoadGivesHalfTheSag() {
    new ConcentratedLoad(1.8, 1000, 0.01).show(500, 180, Source.STATICS, work);
    assertThat(work.lines().get(0).result().si()).isCloseTo(0.005, within(1e-12));
  }

  @Test
  void theFixedPointTakesAllDownSlopeForces() {
    Term sum = SlopeSum.fixedPoint(3000, 400, 150, work);
    assertThat(sum.si()).isEqualTo(3550);
    Term strength = Term.force("R_f", "strength", 3550);
    assertThat(SlopeSum.share(sum, strength, work).si()).isEqualTo(1);
    assertThat(lastNote()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1.4, 0.3", "2, 0.3", "0.3, -0.1", "0.3, 0.3"})
  void twoClampsOutOfOrderOrOffTheEdgeAreRefused(double left, double right) {
    assertThat(new TwoClamps(1.722, left, right).show(810, work).result()).isEmpty();
    assertThat(work.lines()).isEmpty();
  }

  /** Clamps as far from both corners carry half each; here at a sixth: 1.8 m under 900 N/m. */
  @Test
  void symmetricClampsCarryHalfEachAndCrestInTheMiddle() {
    List<Term> reactions = new TwoClamps(1.8, 0.3, 1.5).show(900, work).result().orElseThrow();
    assertThat(reactions).extracting(Term::si).containsExactly(810.0, 810.0);
    double crestNm = 810 * (0.9 - 0.3) - 900 * 0.9 * 0.9 / 2;
    Line crest = line("M");
    assertThat(crest.result().si()).isCloseTo(crestNm, within(1e-9));
    assertThat(crest.formula()).isEqualTo("R_1^2/(2*w)-R_1*a");
    assertThat(line("R_2").result().si()).isCloseTo(810, within(1e-9));
    assertThat(line("t_1").result().si()).isCloseTo(0.9, within(1e-12));
    assertThat(line("t_2").result().si()).isCloseTo(0.9, within(1e-12));
  }

  private Line line(String symbol) {
    return work.lines().stream()
        .filter(each -> each.result().symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aColumnThatSlidesIsNoted() {
    assertThat(SlopeSum.column(3915, 3000, work).si()).isCloseTo(1.305, within(1e-9));
    assertThat(lastNote()).isEqualTo("More than it may take.");
  }

  /** 600 N on a clip; an even load on three spans of 1 m: 1.1 w on the inner clips [handbook]. */
  @Test
  void attachmentsOnEveryClipLoadTheClipsAsTheRoofDoesOnAnAverage() {
    Beam seam = new Beam(0, 3, new double[] {0, 1, 2, 3});
    List<BeamLoad.Point> points = List.of(new BeamLoad.Point(1, 500), new BeamLoad.Point(2, 600));
    List<Term> shown = SeamClips.show(seam, points, 400, work).result().orElseThrow();
    assertThat(shown.get(0).si()).isCloseTo(600, within(1e-9));
    assertThat(shown.get(1).si()).isCloseTo(600 / 440.0, within(1e-9));
  }

  /** 440 N on both inner clips is what the roof brings itself. */
  @ParameterizedTest
  @CsvSource({"439, false", "441, true"})
  void onlyMoreThanTheRoofsOwnLoadIsNoted(double forceN, boolean noted) {
    Beam seam = new Beam(0, 3, new double[] {0, 1, 2, 3});
    List<BeamLoad.Point> points =
        List.of(new BeamLoad.Point(1, forceN), new BeamLoad.Point(2, forceN));
    SeamClips.show(seam, points, 400, work);
    assertThat(lastNote().contains("use more seams or stagger")).isEqualTo(noted);
  }

  @Test
  void bunchedAttachmentsOverloadClipsThatTheRoofAloneDoesNot() {
    Beam seam = new Beam(-0.2, 3, new double[] {0, 1, 2, 3});
    List<BeamLoad.Point> points =
        List.of(new BeamLoad.Point(0.9, 900), new BeamLoad.Point(1.1, 900));
    List<Term> shown = SeamClips.show(seam, points, 400, work).result().orElseThrow();
    double[] array = seam.under(List.<BeamLoad>copyOf(points)).result().orElseThrow().reactionsN();
    double[] own = seam.under(400).result().orElseThrow().reactionsN();
    double mostN = Arrays.stream(array).max().orElseThrow();
    assertThat(shown.get(0).si()).isCloseTo(mostN, within(1e-9));
    assertThat(shown.get(1).si())
        .isCloseTo(mostN / Arrays.stream(own).max().orElseThrow(), within(1e-12));
    assertThat(lastNote()).contains("use more seams or stagger");
  }

  @ParameterizedTest
  @CsvSource({"0.3, 1.4", "0.05, 0.6", "0, 1.722", "0.4, 1.7"})
  void twoClampsInClosedFormAreTheBeam(double left, double right) {
    List<Term> closed = new TwoClamps(1.722, left, right).show(810, work).result().orElseThrow();
    BeamForces beam =
        new Beam(0, 1.722, new double[] {left, right}).under(810).result().orElseThrow();
    assertThat(closed.get(0).si()).isEqualTo(beam.reactionsN()[0]);
    assertThat(closed.get(1).si()).isEqualTo(beam.reactionsN()[1]);
    boolean pries = beam.reactionsN()[0] < 0;
    assertThat(work.lines().stream().map(Line::note).anyMatch(n -> n.contains("prying")))
        .isEqualTo(pries);
    assertThat(closed).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({"1, 810.0", "2, 1620.0"})
  void theClampsOfALineCarryAllModulesOnIt(int modules, double loadNPerM) {
    ModuleOnClamps two = new ModuleOnClamps(2, 1.62, new double[] {0.4, 1.7});
    ModuleOnClamps three = new ModuleOnClamps(2, 1.62, new double[] {0.2, 1.1, 1.9});
    for (ModuleOnClamps module : List.of(two, three)) {
      List<Term> forces = module.show(1000, modules, work).result().orElseThrow();
      assertThat(forces.stream().mapToDouble(Term::si).sum())
          .isCloseTo(2 * loadNPerM, within(1e-9));
      assertThat(forces).hasSize(module.clampsM().length);
    }
  }

  /**
   * Clamps at 0.1 and 0.6 m of 2 m: R2 = w L (1 - 0.1)/0.5 is more than w L, so the first pulls.
   */
  @Test
  void aClampThatPullsIsNotedByItsNumber() {
    List<Term> forces =
        new ModuleOnClamps(2, 1, new double[] {0.1, 0.6})
            .show(1000, 1, work)
            .result()
            .orElseThrow();
    assertThat(forces).extracting(Term::symbol).containsExactly("N_1", "N_2");
    assertThat(forces.get(1).si()).isCloseTo(1000 * 0.9 / 0.5, within(1e-9));
    assertThat(line("N_1").note()).isEqualTo("The clamp has to pull: prying.");
    assertThat(line("N_2").note()).isEmpty();
  }

  @Test
  void aModuleOnOneClampIsRefusedWithoutWork() {
    assertThat(new ModuleOnClamps(2, 1, new double[] {1}).show(1000, 1, work).result()).isEmpty();
    assertThat(work.lines()).isEmpty();
  }
}
