package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calculation.PocketCalculator;
import clampwise.facts.BaseJob;
import clampwise.facts.Fact;
import clampwise.units.Units;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The way on from the attachments: clips, columns, fixed points, pried clamps. */
class LoadPathFactsTest {

  private static final double LBF = Units.POUND_FORCE.factor();

  private static final String SLIDING =
      """
      site: {ground-snow: 0 psf}
      loads: {dead: 10 psf}
      modules: {M30: {length: 6 ft, width: 3 ft}}
      panels: {steel seams: {weight: 1 psf}}
      planes: {south: {slope: "9:12"}}
      fields: {A: {block: {at: [20 ft, 8 ft], rows: 3, columns: 1}}}
      """;

  private static BaseJob seams(String over) {
    return BaseJob.with("seam-roof", over);
  }

  private static String panel(String keys) {
    return "panels: {steel seams: {" + keys + "}}";
  }

  /** Every line follows from its printed inputs, and the last one is the number. */
  private static void follows(Fact fact, double lastSi) {
    List<Section> sections = fact.chain().map(Chain::sections).orElseThrow();
    sections.forEach(section -> section.lines().forEach(line -> follows(line, section.measure())));
    List<Line> last = sections.get(sections.size() - 1).lines();
    assertThat(last.get(last.size() - 1).result().si()).isCloseTo(lastSi, within(1e-5));
  }

  private static void follows(Line line, Measure measure) {
    if (!line.formula().isEmpty()) {
      PocketCalculator calculator = new PocketCalculator(line);
      assertThat(calculator.value(measure))
          .as(line::toString)
          .isCloseTo(measure.value(line.result()), within(calculator.rounding(measure)));
    }
  }

  @Test
  void theClipsOfEachSeamTakeWhatItsAttachmentsPull() {
    PlaneLoads plane = LoadedJob.seams("planes: {south: {end-laps: [14 ft]}}").plane();

    for (ClipPath path : new ClipSums(plane).paths()) {
      double pullN =
          path.pulls().stream()
              .mapToDouble(pull -> pull.forces().get(path.combination()).normalN())
              .sum();
      assertThat(Arrays.stream(path.reactionsN()).sum()).isCloseTo(pullN, within(1e-7));
    }
  }

  @Test
  void anEndLapEndsTheSeam() {
    assertThat(seams("planes: {south: {end-laps: [14 ft]}}").facts(ClipUse.class))
        .extracting(ClipUse::seam)
        .startsWith("seam 16 run 1", "seam 16 run 2", "seam 19 run 1");
  }

  @Test
  void theClipUnderALineTakesMoreThanItWouldFromTheBareRoof() {
    ClipShare share = seams(panel("clip-strength: ~")).facts(ClipShare.class).get(0);

    assertThat(share.forceN()).isGreaterThan(share.roofN());
    assertThat(share.spread()).startsWith("hold each module edge on 4 of the 4 seams");
    follows(share, share.roofN());
  }

  /** The clips of a covering are one part: the one in the corner says what all of them take. */
  @Test
  void aClipIsHeldAgainstTheMostThatTheBareRoofBringsToAnyClipOfThePlane() {
    List<ClipShare> shares = seams(panel("clip-strength: ~")).facts(ClipShare.class);
    ClipShare worst =
        shares.stream().max(Comparator.comparingDouble(ClipShare::forceN)).orElseThrow();

    assertThat(worst.forceN()).isGreaterThan(worst.mostN());
    assertThat(worst.mostN()).isGreaterThan(worst.roofN());
    assertThat(worst.mostZone()).startsWith("3");
    follows(worst, worst.mostN());
    assertThat(shares).allMatch(ClipShare::worseOnField);
    assertThat(
            seams(panel("clip-strength: ~") + "\nfields: {A: {block: {rows: 1}}}")
                .facts(ClipShare.class))
        .hasSizeGreaterThan(4)
        .noneMatch(ClipShare::worseOnField);
  }

  @Test
  void theBareRoofCountsInProportionToTheFactorOfItsCombination() {
    ClipShare service = seams(panel("clip-strength: ~")).facts(ClipShare.class).get(0);
    ClipShare factored =
        seams("loads: {method: lrfd}\n" + panel("clip-strength: ~")).facts(ClipShare.class).get(0);

    assertThat(service.combination()).isEqualTo("0.6 D + 0.6 W");
    assertThat(factored.combination()).isEqualTo("0.9 D + W");
    assertThat(factored.roofN()).isCloseTo(service.roofN() / 0.6, within(1e-5));
  }

  @Test
  void anUltimateLoadIsDividedByItsSafetyFactor() {
    ClipUse use =
        seams(panel("clip-strength: {force: 900 lbf, loads-are: ultimate, safety-factor: 2.5}"))
            .facts(ClipUse.class)
            .get(0);

    assertThat(use.strengthN()).isCloseTo(360 * LBF, within(1e-5));
    assertThat(use.roof()).hasValue("wind on the bare roof pulls 228 lbf");
    follows(use, use.forceN());
  }

  @Test
  void aStrengthOfTheOtherLimitStateIsNotUsed() {
    BaseJob service = seams(panel("clip-strength: {force: 900 lbf, loads-are: resistance}"));
    BaseJob factored = seams("loads: {method: lrfd}");

    assertThat(service.facts(ClipUse.class)).isEmpty();
    assertThat(service.missing(ClipUse.class))
        .containsExactly(
            "the strength of the clips of steel seams: a design strength (LRFD) may not be held"
                + " against service loads (ASD)");
    assertThat(factored.missing(ClipUse.class))
        .containsExactly(
            "the strength of the clips of steel seams: an allowable load (ASD) may not be held"
                + " against factored loads (LRFD)");
    assertThat(factored.facts(ClipShare.class)).isNotEmpty();
  }

  @Test
  void whatIsMissingForTheClipsIsSaid() {
    assertThat(seams(panel("clip-strength: ~")).missing(ClipUse.class))
        .containsExactly("what the clips of steel seams may take is not given (clip-strength)");
    assertThat(seams("site: {wind-speed: ~}").missing(ClipUse.class))
        .containsExactly("the wind speed of the site is not given (site: wind-speed)");
    assertThat(seams("planes: {south: {purlins: ~}}").missing(ClipShare.class))
        .containsExactly("where the clip lines of plane south lie is not given (purlins)");
    assertThat(seams(panel("clip-strength: {force: 900 lbf, loads-are: ~}")).missing(ClipUse.class))
        .containsExactly(
            "whether the strength of the clips of steel seams is allowable, ultimate or a"
                + " resistance is not given (loads-are)");
    assertThat(
            seams("planes: {south: {purlins: {first: ~, spacing: ~, at: [3 ft]}}}")
                .missing(ClipUse.class))
        .startsWith("seam 16 lies on fewer than two clip lines");
  }

  @Test
  void sheetsOnScrewsHaveNoClips() {
    BaseJob job = seams(panel("clips: through-fastened, fixed-point: ~, clip-travel: ~"));

    assertThat(job.facts(ClipUse.class)).isEmpty();
    assertThat(job.missing(ClipUse.class)).isEmpty();
    assertThat(job.missing(FixedPointForce.class)).isEmpty();
  }

  /** By hand: 54 ft² of 10 psf at 3 in 5 are 324 lbf; eight clamps of 410 lbf hold 3280 lbf. */
  @Test
  void aColumnIsHeldByAllItsClampsTogether() {
    ColumnSlip slip = seams(SLIDING).only(ColumnSlip.class);

    assertThat(slip.demandN()).isCloseTo(324 * LBF, within(1e-6));
    assertThat(slip.strengthN()).isCloseTo(3280 * LBF, within(1e-6));
    assertThat(slip.attachments()).isEqualTo(8);
    assertThat(slip.more()).isZero();
    follows(slip, slip.utilisation());
  }

  @Test
  void aColumnThatSlidesSaysHowManyClampsMoreWouldHoldIt() {
    String weak =
        """
        parts: {seam-clamps: {SC-1: {tested: [{metal: steel, thickness: 24 ga, along: 30 lbf, loads-are: allowable}]}}}
        """;

    assertThat(seams(SLIDING + weak).only(ColumnSlip.class).more()).isEqualTo(3);
  }

  @Test
  void whatIsMissingForTheColumnsIsSaid() {
    String silent =
        """
        parts: {seam-clamps: {SC-1: {tested: [{metal: steel, thickness: 24 ga, up: 640 lbf, loads-are: allowable}]}}}
        """;

    assertThat(seams(silent).missing(ColumnSlip.class))
        .containsExactly(
            "the tests of SC-1 do not state what it may take along the slope (tested: along)");
    assertThat(seams("site: {ground-snow: ~}").missing(ColumnSlip.class))
        .containsExactly("the ground snow load of the site is not given (site: ground-snow)");
    assertThat(seams("site: {wind-speed: ~}").missing(ColumnSlip.class)).isEmpty();
  }

  /** By hand: seam 16 holds 32 of 72 in, half of its 144 lbf is 72; with seam 19 it would be 90. */
  @Test
  void aFixedPointTakesHalfOfBothSeamsAndThePanelItself() {
    FixedPointForce force = seams(SLIDING).facts(FixedPointForce.class).get(0);

    assertThat(force.panel()).isEqualTo("panel between seams 15 and 16");
    assertThat(force.arrayN()).isCloseTo(72 * LBF, within(1e-6));
    assertThat(force.panelN()).isCloseTo(25.3 * LBF, within(1e-6));
    assertThat(force.snowN()).isZero();
    follows(force, force.forceN());
  }

  @Test
  void allFixedPointsTogetherTakeTheWholeArray() {
    double arrayN =
        seams(SLIDING).facts(FixedPointForce.class).stream()
            .mapToDouble(FixedPointForce::arrayN)
            .sum();

    assertThat(arrayN).isCloseTo(324 * LBF, within(1e-6));
  }

  @Test
  void snowOnThePanelCountsWhereNoModuleLies() {
    FixedPointForce covered = seams("{}").facts(FixedPointForce.class).get(0);
    FixedPointForce open =
        seams("fields: {A: {block: {omit: [R2C1]}}}").facts(FixedPointForce.class).get(0);

    assertThat(open.panel()).isEqualTo(covered.panel());
    assertThat(open.snowN()).isGreaterThan(covered.snowN());
    assertThat(open.arrayN()).isLessThan(covered.arrayN());
  }

  @Test
  void whatIsMissingForTheFixedPointIsSaid() {
    assertThat(seams(panel("fixed-point-strength: ~")).missing(FixedPointForce.class))
        .containsExactly(
            "nobody says what the fixed point of steel seams may take down the slope"
                + " (fixed-point-strength): who checked the panel's pin?");
    assertThat(seams("site: {ground-snow: ~}").missing(FixedPointForce.class))
        .containsExactly("the ground snow load of the site is not given (site: ground-snow)");
  }

  /** By hand: R = w L (L/2 - a)/(b - a) of an edge with clamps 8 and 24 in from its corner. */
  @Test
  void bothClampsOnOneHalfPry() {
    PriedEdge edge =
        seams(
                """
                modules: {M30: {length: 6 ft}}
                fields:
                  A:
                    block: {at: [20 ft, 8 ft], rows: 2, columns: 1}
                    attach: {per-edge: ~, lines: {1: [16, 17], 2: [16, 19], 3: [16, 19]}}
                """)
            .facts(PriedEdge.class)
            .get(0);

    assertThat(edge.mostN()).isCloseTo(edge.edgeN() * (36 - 8) / (24 - 8.0), within(1e-5));
    assertThat(edge.leastN()).isCloseTo(edge.edgeN() - edge.mostN(), within(1e-5));
    assertThat(edge.clamp()).isEqualTo("A.L1 seam 16");
    assertThat(edge.pried()).isEqualTo(1);
    assertThat(edge.place()).startsWith("set one clamp on the right half of the edge");
  }

  @Test
  void tributaryWidthIsPrintedWhereTheBeamSaysOtherwise() {
    String column =
        """
        modules: {M30: {length: 6 ft}}
        fields:
          A:
            block: {at: [20 ft 4 in, 8 ft], rows: 2, columns: 1}
            attach: {per-edge: ~, lines: {1: %1$s, 2: %1$s, 3: %1$s}}
        """;

    assertThat(seams(column.formatted("[16, 20]")).facts(AttachmentUse.class))
        .isNotEmpty()
        .allMatch(use -> use.tributary().isEmpty());
    assertThat(seams(column.formatted("[16, 18]")).facts(AttachmentUse.class))
        .isNotEmpty()
        .allMatch(use -> use.tributary().orElseThrow().startsWith(" (by tributary width "));
  }
}
