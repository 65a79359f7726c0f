package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Loads of the base job of the rules, changed word by word. */
class LoadFactsTest {

  /** 8 psf of a 12 psf test load carry less than 9.6 psf of 50 mph; the remedy names what would. */
  @Test
  void theRemedyOfAnOverloadedModuleNamesARowThatCarriesItOrThatNoneDoes() {
    assertThat(stronger(""))
        .isNotEmpty()
        .allSatisfy(text -> assertThat(text).startsWith("no row of M30 carries that"));
    assertThat(stronger(", {side: short, zone: 0 mm to 255 mm, down: 9 psf, up: 30 psf}"))
        .isNotEmpty()
        .allSatisfy(
            text ->
                assertThat(text)
                    .isEqualTo(
                        "clamp the short side, 0 mm to 255 mm from the corner, rated 20 psf"));
  }

  private static List<String> stronger(String moreRows) {
    String over =
        """
        site: {wind-speed: 50 mph}
        loads: {dead: 0 psf}
        modules:
          M30:
            length: 6 ft
            width: 3 ft
            loads-are: test
            clamp-zones: [{side: long, zone: 0 mm to 430 mm, down: 100 psf, up: 12 psf}%s]
        fields: {A: {block: {at: [20 ft, 8 ft], rows: 3, columns: 1}}}
        """;
    return BaseJob.with("seam-roof", over.formatted(moreRows)).facts(ModuleUse.class).stream()
        .filter(use -> use.demandPa() > use.ratedPa())
        .map(ModuleUse::stronger)
        .toList();
  }

  private static final double PSF = 47.88026;
  private static final double LBF = 4.4482216;

  private static final String SNOW = "thermal-factor: \"1.2\", simple-rafters: no}\n";

  /** The numbers by hand take the exposure coefficient from its table. */
  private static BaseJob facts(String... replacements) {
    return BaseJob.replacing(
        "seam-roof",
        Stream.concat(
                Stream.of(SNOW, SNOW + "  wind: {exposure-coefficient: table}\n"),
                Stream.of(replacements))
            .toArray(String[]::new));
  }

  private static AttachmentUse worst(BaseJob facts) {
    return facts.facts(AttachmentUse.class).stream()
        .max(Comparator.comparingDouble(AttachmentUse::utilisation))
        .orElseThrow();
  }

  /**
   * Worked by hand: 115 mph, exposure C, 20 ft, gable of 18.4 degrees, zone 1, 21.02 ft²: q_h 25.90
   * psf, GC_p -1.954 (figure 30.3-2B, second-hand), gamma_a 0.671, gamma_E 1.5: -50.93 psf; 0.6 of
   * it less 0.6 of the dead load, 2.14 psf across the roof.
   */
  @Test
  void theUpliftOnAModuleIsTheOneWorkedByHand() {
    BaseJob facts = facts();
    assertThat(facts.facts(ModuleUse.class))
        .filteredOn(use -> use.module().equals("A.R2C1"))
        .singleElement()
        .satisfies(
            use -> {
              assertThat(use.direction()).isEqualTo("up");
              assertThat(use.combination()).isEqualTo("0.6 D + 0.6 W");
              assertThat(use.demandPa() / PSF).isCloseTo(29.27, within(0.01));
            });
  }

  /** By hand: 4 kg x 9.80665 / (1.722 m x 1.134 m) x cos 18.435 degrees x 0.6 is 11.43 Pa. */
  @Test
  void theWrittenMassOfHardwareIsDeadLoad() {
    double bare = upliftOn("A.R2C1", facts());
    double loaded =
        upliftOn("A.R2C1", facts("tilt: 0 deg", "tilt: 0 deg\n    hardware-mass: 4 kg"));
    assertThat(bare - loaded).isCloseTo(11.43, within(0.005));
  }

  private static double upliftOn(String module, BaseJob job) {
    return job.facts(ModuleUse.class).stream()
        .filter(use -> use.module().equals(module) && use.direction().equals("up"))
        .findFirst()
        .orElseThrow()
        .demandPa();
  }

  @Test
  void inTheMiddleOfALargeArrayTheEdgeFactorDoesNotApply() {
    BaseJob facts =
        facts("rows: 3, columns: 4", "rows: 6, columns: 9", "snow: 20 psf", "snow: 0 psf");
    List<ModuleUse> uses = facts.facts(ModuleUse.class);
    assertThat(uses)
        .filteredOn(use -> use.module().equals("A.R1C1"))
        .isNotEmpty()
        .allSatisfy(use -> assertThat(use.demandPa() / PSF).isGreaterThan(28));
    // q_h 25.90 x 1.954 x 0.671 = 33.95 psf without the factor; 0.6 of it less 1.28
    assertThat(uses)
        .filteredOn(use -> use.module().equals("A.R3C5"))
        .isNotEmpty()
        .allSatisfy(use -> assertThat(use.demandPa() / PSF).isCloseTo(19.1, within(0.05)));
  }

  @Test
  void aGapNarrowerThanAQuarterInchEndsTheCreditAndRaisesTheUplift() {
    double credited = worst(facts()).normalN();
    double whole = worst(facts("gap: 12 mm\n    top", "gap: 6 mm\n    top")).normalN();
    // GC_p and internal pressure on the whole module: 25.90 x (1.954 + 0.18) = 55.3 psf
    assertThat(whole / credited).isCloseTo((0.6 * 55.3 - 1.28) / 29.27, within(0.02));
  }

  /**
   * Worked by hand as in {@link #theUpliftOnAModuleIsTheOneWorkedByHand}: the credit holds, and no
   * other module shields it.
   */
  @Test
  void aModuleOnItsOwnHasAirAllRoundAndIsJudged() {
    BaseJob facts = facts("rows: 3, columns: 4", "rows: 1, columns: 1");
    assertThat(facts.missing(ModuleUse.class)).isEmpty();
    assertThat(facts.facts(ModuleUse.class))
        .filteredOn(use -> use.direction().equals("up"))
        .singleElement()
        .satisfies(use -> assertThat(use.demandPa() / PSF).isCloseTo(29.27, within(0.01)));
  }

  /** What is printed is how far one looked, not a gap that nobody drew. */
  @Test
  void noGapIsMeasuredAtAModuleOnItsOwn() {
    assertThat(facts("rows: 3, columns: 4", "rows: 1, columns: 1").facts(ModuleUse.class))
        .filteredOn(use -> use.direction().equals("up"))
        .singleElement()
        .satisfies(
            use ->
                assertThat(use.chain().orElseThrow().sections())
                    .flatExtracting(section -> section.lines())
                    .noneMatch(line -> line.result().symbol().equals("gap"))
                    .filteredOn(line -> line.result().symbol().equals("d_seen"))
                    .isNotEmpty()
                    .allMatch(line -> line.note().contains("there is no gap to measure")));
  }

  @Test
  void anotherFieldTooNearAModuleOnItsOwnEndsTheCredit() {
    BaseJob alone = facts("rows: 3, columns: 4", "rows: 1, columns: 1");
    BaseJob near =
        facts(
            "rows: 3, columns: 4",
            "rows: 1, columns: 1",
            "bonding:\n  jumper",
            "  B: {like: A, block: {at: [20 ft, 11.74 ft], rows: 1, columns: 1}}\n\nbonding:\n  jumper");
    // as with a gap too narrow: 55.3 psf on the whole module
    assertThat(worst(near).normalN() / worst(alone).normalN())
        .isCloseTo((0.6 * 55.3 - 1.28) / 29.27, within(0.02));
  }

  @Test
  void anUltimateLoadIsDividedByItsSafetyFactor() {
    double allowable = worst(facts("up: 640 lbf", "up: 256 lbf")).utilisation();
    double ultimate =
        worst(
                facts(
                    "up: 640 lbf", "up: 640 lbf",
                    "down: 600 lbf", "down: 1500 lbf",
                    "along: 410 lbf", "along: 1025 lbf",
                    "loads-are: allowable", "loads-are: ultimate"))
            .utilisation();
    assertThat(ultimate).isCloseTo(allowable, within(1e-9));
  }

  @Test
  void strengthDesignComparesFactoredLoadsWithDesignStrengths() {
    BaseJob facts =
        facts(
            "loads:\n", "loads:\n  method: lrfd\n",
            "snow: 20 psf", "snow: 0 psf",
            "loads-are: allowable", "loads-are: resistance");
    AttachmentUse use = worst(facts);
    assertThat(use.combination()).isEqualTo("0.9 D + W");
    assertThat(facts.facts(LimitStates.class)).noneMatch(LimitStates::mixed);
  }

  @Test
  void aServiceLoadIsNeverHeldAgainstADesignStrength() {
    BaseJob facts = facts("loads-are: allowable", "loads-are: resistance");
    assertThat(facts.facts(AttachmentUse.class)).isEmpty();
    assertThat(facts.facts(LimitStates.class)).isNotEmpty().allMatch(LimitStates::mixed);
    assertThat(facts.missing(AttachmentUse.class))
        .containsExactly("a design strength (LRFD) may not be held against service loads (ASD)");
  }

  @Test
  void clampsThatShareAnEdgeTakeEqualParts() {
    BaseJob facts =
        facts(
            "loads:\n",
            "loads:\n  clamps-share-edge: yes\n",
            "rows: 3, columns: 4",
            "rows: 3, columns: 1");
    List<Double> inner =
        facts.facts(AttachmentUse.class).stream()
            .filter(use -> use.attachment().startsWith("A.L2"))
            .map(AttachmentUse::normalN)
            .toList();
    assertThat(inner).hasSize(2);
    assertThat(inner.get(0)).isCloseTo(inner.get(1), within(1e-9));
  }

  @Test
  void theLineBetweenTwoRowsCarriesTwiceTheLineAtTheirEnd() {
    BaseJob facts = facts("rows: 3, columns: 4", "rows: 3, columns: 1");
    List<AttachmentUse> uses = facts.facts(AttachmentUse.class);
    double outer = sum(uses, "A.L1");
    assertThat(sum(uses, "A.L2")).isCloseTo(2 * outer, within(1e-6));
    // half a module: 29.27 psf x 21.019 ft² / 2
    assertThat(outer / LBF).isCloseTo(307.6, within(0.2));
  }

  private static double sum(List<AttachmentUse> uses, String line) {
    return uses.stream()
        .filter(use -> use.attachment().startsWith(line))
        .mapToDouble(AttachmentUse::normalN)
        .sum();
  }

  @Test
  void withoutSnowOnlyThePressureIsNotChecked() {
    BaseJob facts = facts("  ground-snow: 20 psf\n", "");
    assertThat(facts.missing(AttachmentUse.class))
        .containsExactly("the ground snow load of the site is not given (site: ground-snow)");
    assertThat(facts.facts(AttachmentUse.class))
        .isNotEmpty()
        .allMatch(u -> u.pull().equals("uplift"));
  }

  @Test
  void aThirdClampInTheMiddleHidesNoRowOfTheClampZoneTable() {
    List<ModuleUse> two = facts().facts(ModuleUse.class);
    List<ModuleUse> three =
        facts("attach: {per-edge: 2}", "attach: {per-edge: 3}").facts(ModuleUse.class);
    assertThat(two).hasSize(12);
    assertThat(three).hasSameSizeAs(two);
  }

  @Test
  void aTestWithoutALoadAlongTheSeamSaysSo() {
    BaseJob facts = facts("          along: 410 lbf\n", "");
    assertThat(facts.missing(AttachmentUse.class))
        .containsExactly("the test of SC-1 states no load along the seam (along)");
  }

  @Test
  void metricAndImperialInputGiveTheSameShares() {
    double imperial = worst(facts()).utilisation();
    double metric =
        worst(
                facts(
                    "115 mph", "51.4096 m/s",
                    "ground-snow: 20 psf", "ground-snow: 957.6052 Pa",
                    "mean-roof-height: 20 ft", "mean-roof-height: 6.096 m"))
            .utilisation();
    // 0.613 and 0.00256 differ by 0.05 %
    assertThat(metric).isCloseTo(imperial, within(1e-3));
  }
}
