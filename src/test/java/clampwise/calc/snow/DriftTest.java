package clampwise.calc.snow;

import static clampwise.calc.Shipped.work;
import static clampwise.calc.snow.Psf.NEW;
import static clampwise.calc.snow.Psf.OLD;
import static clampwise.calc.snow.Psf.basis;
import static clampwise.calc.snow.Psf.feet;
import static clampwise.calc.snow.Psf.m;
import static clampwise.calc.snow.Psf.pa;
import static clampwise.calc.snow.Psf.psf;
import static clampwise.calc.snow.Psf.windy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.Shipped;
import clampwise.calc.snow.StepDrift.Drift;
import clampwise.calc.snow.StepDrift.Step;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DriftTest {

  /** Case A-N2: published calculation sheet [read]. */
  @Test
  void aN2DriftsOfAStep() {
    SnowBasis basis = basis(OLD, 20, Risk.II);
    assertThat(heightFt(basis, 300)).isCloseTo(5.237, within(5e-4));
    Step step = step(20, Optional.of(300.0), Optional.of(35.0), 15.12);
    StepDrift drifts = StepDrift.of(basis, step, work()).result().orElseThrow();
    assertThat(feet(drifts.clearHeightM())).isCloseTo(20 - 0.911, within(5e-4));
    assertThat(feet(drifts.drifts().get(0).heightM())).isCloseTo(5.237, within(5e-4));
    assertThat(feet(drifts.drifts().get(1).heightM())).isCloseTo(1.344, within(5e-4));
    assertThat(feet(drifts.drifts().get(1).widthM())).isCloseTo(4 * 1.344, within(2e-3));
  }

  /** Case A-N10, b1: hand calculation beside a public transcription [2nd]. */
  @Test
  void aN10LeewardDriftWithAnImportanceFactor() {
    Step step = step(20, Optional.of(60.0), Optional.empty(), 19.0575);
    StepDrift drifts = StepDrift.of(basis(OLD, 25, Risk.III), step, work()).result().orElseThrow();
    Drift drift = drifts.drifts().get(0);
    assertThat(feet(drift.heightM())).isCloseTo(2.7212, within(5e-5));
    assertThat(feet(drift.widthM())).isCloseTo(10.8846, within(1e-4));
    assertThat(psf(drift.peakPa())).isCloseTo(46.940, within(1e-3));
    assertThat(feet(drifts.clearHeightM())).isCloseTo(20 - 1.1048, within(5e-5));
  }

  /** Case A-N4: parapet, 7-22; hand calculation beside a public transcription [2nd]. */
  @Test
  void aN4DriftAtAParapet() {
    SnowBasis basis = windy(30, 0.55);
    assertThat(heightFt(basis, 60)).isCloseTo(3.147, within(5e-4));
    Step step = step(4, Optional.empty(), Optional.of(60.0), 23.94);
    StepDrift drifts = StepDrift.of(basis, step, work()).result().orElseThrow();
    Drift drift = drifts.drifts().get(0);
    assertThat(feet(drift.heightM())).isCloseTo(2.360, within(5e-4));
    assertThat(feet(drift.widthM())).isCloseTo(18.88, within(5e-3));
    assertThat(psf(drift.peakPa())).isCloseTo(42.24, within(0.01));
    assertThat(psf(drift.peakPa()) + 23.94).isCloseTo(66.18, within(0.01));
    assertThat(feet(drifts.clearHeightM())).isCloseTo(4 - 1.337, within(5e-4));
  }

  /** Case A-N5: leeward step, 7-22; hand calculation beside a public transcription [2nd]. */
  @Test
  void aN5LeewardDriftOf722() {
    Step step = step(10, Optional.of(100.0), Optional.empty(), 28.476);
    StepDrift drifts = StepDrift.of(windy(40, 0.5), step, work()).result().orElseThrow();
    Drift drift = drifts.drifts().get(0);
    assertThat(feet(drifts.clearHeightM())).isCloseTo(8.517, within(5e-4));
    assertThat(feet(drift.heightM())).isCloseTo(3.727, within(5e-4));
    assertThat(feet(drift.widthM())).isCloseTo(14.91, within(5e-3));
    assertThat(psf(drift.peakPa())).isCloseTo(71.55, within(0.01));
    assertThat(psf(drift.peakPa()) + 28.48).isCloseTo(100.03, within(0.01));
  }

  /** Case A-N7: hc / hb = 0.068, no drift [2nd]. */
  @Test
  void aN7ALowStepHasNoDrift() {
    Step step = step(1, Optional.of(100.0), Optional.empty(), 15.54);
    Outcome<StepDrift> outcome = StepDrift.of(windy(20, 0.5), step, work());
    assertThat(outcome).isInstanceOf(Outcome.NotApplicable.class);
    assertThat(outcome.toString()).contains("0.068");
  }

  /** 7.7.1: up to the clear height, then 4 hd² / hc wide, at most 8 hc [2nd]. */
  @Test
  void aStepFullOfSnowWidensItsDrift() {
    SnowBasis basis = basis(OLD, 20, Risk.II);
    StepDrift full =
        StepDrift.of(basis, step(4.911, Optional.of(300.0), Optional.empty(), 15.12), work())
            .result()
            .orElseThrow();
    Drift drift = full.drifts().get(0);
    assertThat(feet(drift.heightM())).isCloseTo(4.0, within(1e-3));
    assertThat(feet(drift.widthM())).isCloseTo(4 * 5.237 * 5.237 / 4.0, within(0.02));
    StepDrift low =
        StepDrift.of(basis, step(1.911, Optional.of(300.0), Optional.empty(), 15.12), work())
            .result()
            .orElseThrow();
    assertThat(low.drifts().get(0).widthM()).isCloseTo(8 * low.clearHeightM(), within(1e-9));
  }

  /** 7.7.1: the drift falls straight to zero at its width. */
  @Test
  void aDriftIsATriangle() {
    Drift drift = new Drift("leeward", 1, 4, 1000);
    assertThat(drift.atPa(0)).isEqualTo(1000);
    assertThat(drift.atPa(1)).isEqualTo(750);
    assertThat(drift.atPa(4)).isZero();
    assertThat(drift.atPa(5)).isZero();
  }

  /** 7-16: a fetch below 20 ft counts as 20 ft, at a step up to sqrt(Is pg lu / 4 gamma) [2nd]. */
  @Test
  void aShortFetchLimitsTheDriftOf716() {
    SnowBasis basis = basis(OLD, 30, Risk.II);
    assertThat(heightFt(basis, 10)).isEqualTo(heightFt(basis, 20));
    double densityNm3 = SnowDensity.newtonPerM3(basis, work());
    double atStepM =
        DriftHeight.atStepM(basis, m(4), densityNm3, "h_d", work()).result().orElseThrow();
    assertThat(feet(atStepM)).isCloseTo(Math.sqrt(30 * 4 / (4 * 17.9)), within(1e-6));
  }

  @Test
  void without722sWinterWindThereIsNoDriftButAReason() {
    Step step = step(10, Optional.of(100.0), Optional.empty(), 28.48);
    assertThat(StepDrift.of(basis(NEW, 40, Risk.II), step, work()).toString()).contains("W2");
  }

  @ParameterizedTest
  @CsvSource({"20, 30", "50, 100", "100, 300"})
  void driftsGrowWithFetchGroundSnowAndWind(double fetch, double longer) {
    assertThat(heightFt(windy(30, 0.4), longer)).isGreaterThan(heightFt(windy(30, 0.4), fetch));
    assertThat(heightFt(windy(30, 0.5), fetch)).isGreaterThan(heightFt(windy(30, 0.4), fetch));
    assertThat(heightFt(windy(40, 0.4), fetch)).isGreaterThan(heightFt(windy(30, 0.4), fetch));
    assertThat(heightFt(basis(OLD, 40, Risk.II), longer))
        .isGreaterThan(heightFt(basis(OLD, 30, Risk.II), fetch));
  }

  /** Worked example 3.8: 0.4 x 28 x 30 ft = 336 plf over 15 ft = 22.4 psf [read]. */
  @Test
  void example38SlidingSnow() {
    SlidingSnow.Upper upper = new SlidingSnow.Upper(pa(28), m(30), Psf.rise(4), true);
    SlidingSnow sliding = SlidingSnow.of(Shipped.snow(OLD), upper, work()).result().orElseThrow();
    assertThat(clampwise.units.Units.PLF.fromSi(sliding.lineNm())).isCloseTo(336, within(1e-6));
    assertThat(psf(sliding.pressurePa())).isCloseTo(22.4, within(1e-6));
    assertThat(sliding.atPa(m(14))).isEqualTo(sliding.pressurePa());
    assertThat(sliding.atPa(m(16))).isZero();
  }

  /** 7.9: slippery above 1/4 on 12, others above 2 on 12; from memory. */
  @Test
  void aFlatterUpperRoofKeepsItsSnow() {
    assertThat(sliding(0.25, true)).isInstanceOf(Outcome.NotApplicable.class);
    assertThat(sliding(0.26, true)).isInstanceOf(Outcome.Result.class);
    assertThat(sliding(2, false)).isInstanceOf(Outcome.NotApplicable.class);
    assertThat(sliding(2.1, false)).isInstanceOf(Outcome.Result.class);
  }

  private static Outcome<SlidingSnow> sliding(double rise, boolean slippery) {
    SlidingSnow.Upper upper = new SlidingSnow.Upper(pa(28), m(30), Psf.rise(rise), slippery);
    return SlidingSnow.of(Shipped.snow(NEW), upper, work());
  }

  private static Step step(
      double riseFt, Optional<Double> upperFt, Optional<Double> lowerFt, double balancedPsf) {
    return new Step(m(riseFt), upperFt.map(Psf::m), lowerFt.map(Psf::m), pa(balancedPsf));
  }

  private static double heightFt(SnowBasis basis, double fetchFt) {
    double densityNm3 = SnowDensity.newtonPerM3(basis, work());
    return feet(DriftHeight.m(basis, m(fetchFt), densityNm3, "h_d", work()).result().orElseThrow());
  }
}
