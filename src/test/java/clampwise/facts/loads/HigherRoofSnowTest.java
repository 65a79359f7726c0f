package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.units.Units;
import org.junit.jupiter.api.Test;

/** Snow that a higher roof drifts or drops on an array beside it. */
class HigherRoofSnowTest {

  private static final String[] BESIDE_A_WALL = {
    "size: 100 ft x 31 ft 7 1/2 in",
    "size: 100 ft x 31 ft 7 1/2 in\n    edges: {left: wall}",
    "block: {at: [20 ft, 8 ft]",
    "block: {at: [0 ft, 8 ft]",
    "roof: gable",
    "roof: monoslope",
    "ground-snow: 20 psf",
    "ground-snow: 40 psf"
  };

  /**
   * wind-snow.md A-N5 [R2 K1 C3]: 7-22, pg 40, Ce 0.9, Ct 1.13, W2 0.5, leeward hr 10 ft, lu 100
   * ft: pf 28.48, w 14.91 ft, pd 71.55, total 100.03 psf at the step. The next column begins 1734
   * mm (5.689 ft) further: 28.48 + 71.55 (1 - 5.689 / 14.91) = 72.73 psf, worked out.
   */
  @Test
  void aDriftAddsToTheBalancedLoadAndFallsWithTheDistance() {
    ClaimJobs job =
        beside(
            "exposure-factor: \"0.9\", thermal-factor: \"1.13\", winter-wind: \"0.5\","
                + " higher-roof: {beside: south, rise: 10 ft, length: 100 ft}",
            "loads: asce-7-22");
    FieldSnow snow = snow(job, AsceEdition.ASCE_7_22);
    assertThat(psf(snow.planPa(module(job, 1)))).isCloseTo(100.03, within(0.05));
    assertThat(psf(snow.planPa(module(job, 2)))).isCloseTo(72.73, within(0.05));
  }

  /**
   * examples.md 3.8 [read]: pf 28 psf, W 30 ft: 0.4 x 28 x 30 = 336 plf over 15 ft, 22.4 psf. The
   * step is too low for a drift; the fourth column begins 17.07 ft away, beyond the 15 ft.
   */
  @Test
  void slidingSnowLiesOnFifteenFeetFromTheUpperEave() {
    ClaimJobs job =
        beside(
            "exposure-factor: \"1.0\", thermal-factor: \"1.0\", higher-roof: {beside: south, rise:"
                + " 1 ft 6 in, length: 60 ft, eave-to-ridge: 30 ft, slope: 4:12, slippery: yes}",
            "loads: asce-7-16");
    FieldSnow snow = snow(job, AsceEdition.ASCE_7_16);
    assertThat(psf(snow.planPa(module(job, 3)))).isCloseTo(28 + 22.4, within(0.005));
    assertThat(psf(snow.planPa(module(job, 4)))).isCloseTo(28, within(0.005));
  }

  @Test
  void theShownWorkEndsAtTheSameLoad() {
    ClaimJobs job =
        beside(
            "exposure-factor: \"1.0\", thermal-factor: \"1.0\", higher-roof: {beside: south, rise:"
                + " 10 ft, length: 60 ft, eave-to-ridge: 30 ft, slope: 4:12, slippery: yes}",
            "loads: asce-7-16");
    FieldSnow snow = snow(job, AsceEdition.ASCE_7_16);
    for (int column = 1; column <= 4; column++) {
      Work work = new Work(Measure.IMPERIAL);
      double shownPa = snow.show(module(job, column), work).si();
      assertThat(shownPa).isEqualTo(snow.planPa(module(job, column)));
      assertThat(work.lines().get(work.lines().size() - 1).result().si()).isEqualTo(shownPa);
    }
  }

  @Test
  void whatIsMissingOfTheHigherRoofIsSaid() {
    assertThat(
            reason(
                beside(
                    "exposure-factor: \"1.0\", thermal-factor: \"1.0\", higher-roof: {beside: south,"
                        + " rise: 10 ft, length: 60 ft, eave-to-ridge: 30 ft}",
                    "loads: asce-7-16")))
        .isEqualTo("the slope of the higher roof is not given");
    assertThat(
            reason(
                ClaimJobs.with(
                    "snow: {",
                    "snow: {higher-roof: {beside: south, rise: 10 ft, length: 60 ft}, ")))
        .isEqualTo("plane south has no edge of kind step or wall for the higher roof");
  }

  @Test
  void aWallOfWhichTheJobSaysNothingIsTold() {
    assertThat(ClaimJobs.with(BESIDE_A_WALL).facts(StepSnow.class))
        .singleElement()
        .satisfies(step -> assertThat(step.described()).isFalse());
    assertThat(ClaimJobs.with().facts(StepSnow.class)).isEmpty();
  }

  private static ClaimJobs beside(String snow, String code) {
    String[] all = java.util.Arrays.copyOf(BESIDE_A_WALL, BESIDE_A_WALL.length + 4);
    all[BESIDE_A_WALL.length] =
        "exposure-factor: \"1.0\", thermal-factor: \"1.2\", simple-rafters: no";
    all[BESIDE_A_WALL.length + 1] = snow;
    all[BESIDE_A_WALL.length + 2] = "loads: asce-7-16";
    all[BESIDE_A_WALL.length + 3] = code;
    return ClaimJobs.with(all);
  }

  private static FieldSnow snow(ClaimJobs job, AsceEdition edition) {
    Outcome<FieldSnow> snow = AsceSnow.of(job.site(), edition);
    assertThat(snow).isInstanceOf(Result.class);
    return snow.result().orElseThrow();
  }

  private static String reason(ClaimJobs job) {
    Outcome<FieldSnow> snow = AsceSnow.of(job.site(), AsceEdition.ASCE_7_16);
    assertThat(snow).isInstanceOf(NotApplicable.class);
    return ((NotApplicable<FieldSnow>) snow).reason();
  }

  private static PlacedModule module(ClaimJobs job, int column) {
    return job.site().field().modules().stream()
        .filter(module -> module.column() == column && module.row() == 1)
        .findFirst()
        .orElseThrow();
  }

  private static double psf(double pa) {
    return Units.PSF.fromSi(pa);
  }
}
