package clampwise.calc.en;

import static clampwise.calc.Shipped.enSnow;
import static clampwise.calc.Shipped.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.en.EnSnow.Roof;
import clampwise.calc.en.EnSnow.Site;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnSnowTest {

  /** Case A-E5: tests of a public library; table 5.2. */
  @ParameterizedTest
  @CsvSource({
    "0, false, 0.8",
    "30, false, 0.8",
    "45, false, 0.4",
    "60, false, 0",
    "90, false, 0",
    "40, false, 0.53333",
    "45, true, 0.8",
    "70, true, 0.8"
  })
  void aE5ShapeCoefficients(double degrees, boolean held, double expected) {
    assertThat(SnowShape.mu1(enSnow(), Math.toRadians(degrees), held, work()))
        .isCloseTo(expected, within(1e-5));
  }

  /** Table 5.2 [read]: 0.8 + 0.8 alpha / 30, then 1.6. */
  @ParameterizedTest
  @CsvSource({"0, 0.8", "15, 1.2", "30, 1.6", "45, 1.6", "60, 1.6"})
  void valleysCollectSnow(double degrees, double expected) {
    assertThat(SnowShape.mu2(enSnow(), Math.toRadians(degrees), work()))
        .isCloseTo(expected, within(1e-9));
  }

  /** Case A-E6: guide to actions on single-storey steel buildings, appendix A [read]. */
  @Test
  void aE6DuopitchOf85Degrees() {
    Roof roof = new Roof(Math.toRadians(8.5), Optional.of(Math.toRadians(8.5)), false);
    EnSnow snow = EnSnow.of(enSnow(), new Site(650, 1, 1), roof, work()).result().orElseThrow();
    assertThat(snow.cases()).hasSize(3);
    assertThat(snow.cases().get(0).pa()).isCloseTo(520, within(1e-9));
    assertThat(snow.cases().get(1).pa()).isCloseTo(260, within(1e-9));
    assertThat(snow.cases().get(1).otherPa()).isCloseTo(520, within(1e-9));
    assertThat(snow.cases().get(2).pa()).isCloseTo(520, within(1e-9));
    assertThat(snow.cases().get(2).otherPa()).isCloseTo(260, within(1e-9));
    assertThat(snow.governing().name()).isEqualTo("even");
  }

  @Test
  void aMonopitchRoofHasOneCase() {
    Roof roof = new Roof(Math.toRadians(45), Optional.empty(), false);
    EnSnow snow =
        EnSnow.of(enSnow(), new Site(1000, 1.2, 0.9), roof, work()).result().orElseThrow();
    assertThat(snow.cases()).hasSize(1);
    assertThat(snow.governing().pa()).isCloseTo(0.4 * 1.2 * 0.9 * 1000, within(1e-9));
  }

  @Test
  void aThermalCoefficientAboveOneIsRefused() {
    Roof roof = new Roof(0, Optional.empty(), false);
    assertThat(EnSnow.of(enSnow(), new Site(1000, 1, 1.1), roof, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  /** 5.3.6, from memory: mu_w = 30 / 6 = 5, at most 2 x 3 / 0.8 = 7.5, so 4; length 6 m. */
  @Test
  void aTallWallFillsUpToItsLimit() {
    EnDrift drift = step(3, 20, 10, Optional.empty());
    assertThat(drift.wallPa()).isCloseTo(4 * 800, within(1e-9));
    assertThat(drift.lengthM()).isEqualTo(6);
    assertThat(drift.atPa(3)).isCloseTo((3200 + 640) / 2.0, within(1e-9));
    assertThat(drift.atPa(7)).isCloseTo(0.8 * 800, within(1e-9));
  }

  /** 5.3.6, from memory: 2 x 1 / 0.8 = 2.5 governs; shortest drift 5 m. */
  @Test
  void aLowStepHoldsNoMoreThanItsHeight() {
    EnDrift drift = step(1, 20, 10, Optional.empty());
    assertThat(drift.wallPa()).isCloseTo(2.5 * 800, within(1e-9));
    assertThat(drift.lengthM()).isEqualTo(5);
  }

  /**
   * 5.3.6, from memory: half the load of the upper slope as a triangle of 6 m, 0.8 x 9 / 6 = 1.2.
   */
  @Test
  void aSteepUpperSlopeShedsHalfItsLoad() {
    double slidesPa = step(3, 9, 3, Optional.of(new EnDrift.Upper(Math.toRadians(20), 9))).wallPa();
    double staysPa = step(3, 9, 3, Optional.of(new EnDrift.Upper(Math.toRadians(15), 9))).wallPa();
    assertThat(staysPa).isCloseTo(2 * 800, within(1e-9));
    assertThat(slidesPa - staysPa).isCloseTo(1.2 * 800, within(1e-9));
  }

  /** 6.2, from memory: 2 x 0.6 / 0.8 = 1.5; at most 2, at least 0.8; length 5 m. */
  @ParameterizedTest
  @CsvSource({"0.6, 1.5", "2, 2", "0.1, 0.8"})
  void snowCollectsAtObstructions(double rise, double expected) {
    EnDrift drift =
        EnDrift.atObstruction(enSnow(), new Site(800, 1, 1), rise, work()).result().orElseThrow();
    assertThat(drift.wallPa()).isCloseTo(expected * 800, within(1e-9));
    assertThat(drift.lengthM()).isEqualTo(5);
  }

  private static EnDrift step(
      double rise, double upper, double lower, Optional<EnDrift.Upper> sloping) {
    EnDrift.Step step = new EnDrift.Step(rise, upper, lower, sloping);
    return EnDrift.atStep(enSnow(), new Site(800, 1, 1), step, work()).result().orElseThrow();
  }
}
