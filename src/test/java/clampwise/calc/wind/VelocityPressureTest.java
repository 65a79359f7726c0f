package clampwise.calc.wind;

import static clampwise.calc.wind.Cases.CODE_16;
import static clampwise.calc.wind.Cases.CODE_22;
import static clampwise.calc.wind.Cases.FOOT_M;
import static clampwise.calc.wind.Cases.of;
import static clampwise.calc.wind.Cases.psf;
import static clampwise.calc.wind.Cases.site;
import static clampwise.calc.wind.Cases.velocity;
import static clampwise.calc.wind.Cases.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.ExposureMethod;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Worked cases A-Q1 to A-Q10 of handbook part 8.1 and the values of its part 1. */
class VelocityPressureTest {

  /** A-Q1 [read: a guide to the 7-16 wind provisions, ch. 8, for Kh; q worked out]. */
  @Test
  void aQ1ExposureB12Feet() {
    assertThat(k(CODE_16, Exposure.B, 12.1)).isCloseTo(0.57, within(1e-9));
    assertThat(q(CODE_16, 105, Exposure.B, 12.1)).isCloseTo(13.67, within(0.005));
  }

  /** A-Q2 [2nd]. */
  @Test
  void aQ2ExposureC20Feet() {
    assertThat(k(CODE_16, Exposure.C, 20)).isCloseTo(0.90, within(1e-9));
    assertThat(q(CODE_16, 115, Exposure.C, 20)).isCloseTo(25.8998, within(0.00005));
  }

  /** A-Q3 [2nd]: 7-22 prints q without the directionality factor. */
  @Test
  void aQ3TheLaterEditionLeavesDirectionalityToThePressure() {
    Velocity velocity = velocity(CODE_22, site(115, Exposure.C), 20);
    assertThat(psf(velocity.pressurePa())).isCloseTo(30.47, within(0.005));
    assertThat(psf(velocity.loadPa())).isCloseTo(25.90, within(0.005));
  }

  /** A-Q4 [2nd]. */
  @Test
  void aQ4ExposureB30Feet() {
    assertThat(k(CODE_16, Exposure.B, 30)).isCloseTo(0.70, within(1e-9));
    assertThat(q(CODE_16, 120, Exposure.B, 30)).isCloseTo(21.9341, within(0.00005));
  }

  /** A-Q5 [2nd]: 1.03 + 0.6 x 0.05. */
  @Test
  void aQ5BetweenRowsOfTheTable() {
    assertThat(k(CODE_16, Exposure.D, 18)).isCloseTo(1.06, within(1e-9));
    assertThat(q(CODE_16, 130, Exposure.D, 18)).isCloseTo(38.9809, within(0.00005));
  }

  /** A-Q6 [2nd]. */
  @Test
  void aQ6OnAHill() {
    WindSite hill = site(150, Exposure.C, 1.2, Optional.empty());
    assertThat(psf(velocity(CODE_16, hill, 20).pressurePa())).isCloseTo(52.8768, within(0.00005));
  }

  /** A-Q7 [2nd]. */
  @Test
  void aQ7OnHighGround() {
    WindSite high = site(115, Exposure.C, 1, Optional.of(0.93));
    assertThat(psf(velocity(CODE_22, high, 20).pressurePa())).isCloseTo(28.34, within(0.005));
    assertThat(psf(velocity(CODE_16, high, 20).pressurePa())).isCloseTo(24.09, within(0.005));
  }

  /** A-Q8 [2nd]. */
  @Test
  void aQ8TheEditionsDifferInExposureB() {
    assertThat(k(CODE_22, Exposure.B, 40)).isCloseTo(0.74, within(1e-9));
    assertThat(k(CODE_16, Exposure.B, 40)).isCloseTo(0.76, within(1e-9));
    assertThat(q(CODE_16, 115, Exposure.B, 40)).isCloseTo(21.87, within(0.005));
  }

  /** A-Q9 [2nd]: 30.8 printed with rounded factors, 30.71 exact. */
  @Test
  void aQ9ExposureC30Feet() {
    assertThat(k(CODE_22, Exposure.C, 30)).isCloseTo(0.98, within(1e-9));
    Velocity velocity = velocity(CODE_22, site(120, Exposure.C), 30);
    assertThat(psf(velocity.loadPa())).isCloseTo(30.71, within(0.005));
  }

  /** A-Q10 [library]: SI, 7-16, by the formula. */
  @ParameterizedTest
  @CsvSource({"5, 0.8650282, 1202.905", "6.5, 0.9141519, 1271.217"})
  void aQ10InSi(double heightM, double k, double pressurePa) {
    WindSite site = new WindSite(52, Exposure.C, 1, Optional.empty(), Optional.of(110.0));
    Work work = new Work(Measure.METRIC);
    double ke = GroundElevation.of(CODE_16, site, work);
    assertThat(ke).isCloseTo(0.98699530, within(5e-9));
    double kz = of(ExposureCoefficient.of(byFormula(CODE_16), Exposure.C, heightM, work));
    assertThat(kz).isCloseTo(k, within(5e-8));
    Velocity velocity = of(VelocityPressure.of(byFormula(CODE_16), site, heightM, work));
    assertThat(velocity.pressurePa()).isCloseTo(pressurePa, within(0.0005));
  }

  /** Worked example 3.8: V 115, Kz 0.90, Kd 0.85 [memory for Kz] -> 25.9 psf. */
  @Test
  void example38VelocityPressure() {
    assertThat(q(CODE_16, 115, Exposure.C, 20)).isCloseTo(25.9, within(0.05));
  }

  /** Handbook part 1, values of the formula [computed]. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, B, .5747 .6240 .6650 .7006 .7606 .8107 .8540 .9272 .9882 1.2047 1.5652",
    "ASCE_7_22, B, .5729 .6186 .6565 .6892 .7442 .7898 .8291 .8952 .9501 1.1430 1.4594",
    "ASCE_7_16, C, .8489 .9019 .9453 .9823 1.0436 1.0938 1.1366 1.2075 1.2656 1.4645 1.7760",
    "ASCE_7_22, C, .8512 .9026 .9447 .9805 1.0398 1.0882 1.1295 1.1978 1.2536 1.4441 1.7410",
    "ASCE_7_16, D, 1.0302 1.0831 1.1259 1.1622 1.2218 1.2702 1.3111 1.3784 1.4329 1.6165 1.8958",
    "ASCE_7_22, D, 1.0350 1.0881 1.1312 1.1676 1.2276 1.2761 1.3172 1.3848 1.4396 1.6241 1.9046"
  })
  void theFormulaGivesTheHandbooksValues(AsceEdition edition, Exposure exposure, String printed) {
    double[] heightsFt = {15, 20, 25, 30, 40, 50, 60, 80, 100, 200, 500};
    String[] values = printed.split(" ");
    for (int i = 0; i < heightsFt.length; i++) {
      double k = k(byFormula(Cases.code(edition)), exposure, heightsFt[i]);
      assertThat(k).isCloseTo(Double.parseDouble(values[i]), within(0.00005));
    }
  }

  /** Handbook part 1: largest difference of table and formula over all rows [computed]. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, B, .005", "ASCE_7_16, C, .008", "ASCE_7_16, D, .007",
    "ASCE_7_22, B, .011", "ASCE_7_22, C, .013", "ASCE_7_22, D, .015"
  })
  void tableAndFormulaDifferAsTheHandbookSays(AsceEdition edition, Exposure exposure, double most) {
    WindCode code = Cases.code(edition);
    double greatest =
        code.editionTable("exposure-coefficients").rows().stream()
            .mapToDouble(row -> row.number("height") / FOOT_M)
            .map(ft -> Math.abs(k(code, exposure, ft) - k(byFormula(code), exposure, ft)))
            .max()
            .orElseThrow();
    assertThat(greatest).isCloseTo(most, within(0.0006));
  }

  /** 6000 ft by the formula [computed]; Table 26.9-1 prints 0.80 [2nd]. */
  @Test
  void theGroundElevationFactorAt6000Feet() {
    WindSite site = new WindSite(50, Exposure.C, 1, Optional.empty(), Optional.of(6000 * FOOT_M));
    assertThat(GroundElevation.of(CODE_16, site, work())).isCloseTo(0.8048, within(0.00005));
  }

  @Test
  void withoutElevationTheFactorIsOneAndSaysSo() {
    Work work = work();
    assertThat(GroundElevation.of(CODE_16, site(115, Exposure.B), work)).isEqualTo(1);
    assertThat(work.lines().get(0).note()).contains("always permitted");
  }

  @Test
  void theFloorOfExposureBHoldsOnlyWhenChosen() {
    WindChoices floored = Cases.choices().withExposureFloor(true);
    assertThat(k(CODE_22.with(floored), Exposure.B, 20)).isEqualTo(0.70);
    assertThat(k(CODE_22.with(floored), Exposure.C, 20)).isCloseTo(0.90, within(1e-12));
    assertThat(k(CODE_22.with(floored), Exposure.B, 40)).isCloseTo(0.74, within(1e-12));
    assertThat(k(CODE_22, Exposure.B, 20)).isCloseTo(0.62, within(1e-12));
  }

  @Test
  void theLineSaysWhichOfTableAndFormulaWasUsed() {
    Work work = work();
    of(ExposureCoefficient.of(CODE_22, Exposure.D, 30 * FOOT_M, work));
    assertThat(work.lines())
        .extracting(Line::note)
        .containsExactly("by the table; the formula gives 1.1676");
  }

  /** 7-22, 30 ft: the table is above the formula in exposure B and below it in exposure D. */
  @ParameterizedTest
  @CsvSource({"B, .70", "D, 1.1676"})
  void theLargerOfBothCanBeChosen(Exposure exposure, double larger) {
    WindCode severe = CODE_22.with(Cases.choices().with(ExposureMethod.SEVERE));
    assertThat(k(severe, exposure, 30)).isCloseTo(larger, within(0.00005));
  }

  @Test
  void aHeightBelow15FeetIsShownAsRaised() {
    Work work = work();
    of(ExposureCoefficient.of(byFormula(CODE_16), Exposure.B, 3, work));
    assertThat(work.lines().get(0).formula()).isEqualTo("max(h, z_min)");
    assertThat(work.lines().get(1).note()).isEqualTo("by the formula; the table gives 0.57");
  }

  @Test
  void beyondTheTableTheFormulaGoesOnToItsOwnEnd() {
    assertThat(ExposureCoefficient.of(CODE_16, Exposure.C, 501 * FOOT_M, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
    WindCode formula22 = byFormula(CODE_22);
    assertThat(k(formula22, Exposure.C, 2460)).isCloseTo(2.41, within(1e-9));
    assertThat(k(formula22, Exposure.C, 3280)).isCloseTo(2.41, within(1e-9));
    assertThat(ExposureCoefficient.of(formula22, Exposure.C, 3281 * FOOT_M, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
    assertThat(ExposureCoefficient.of(byFormula(CODE_16), Exposure.C, 901 * FOOT_M, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({"0, 20", "-1, 20", "NaN, 20", "115, -1", "115, NaN"})
  void nonsenseHasNoPressure(double mph, double heightFt) {
    assertThat(VelocityPressure.of(CODE_16, site(mph, Exposure.C), heightFt * FOOT_M, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @EnumSource
  void pressureGrowsWithSpeedHeightAndExposure(AsceEdition edition) {
    WindCode code = Cases.code(edition);
    for (double h = 10; h < 480; h += 7) {
      assertThat(q(code, 115, Exposure.B, h + 7))
          .isGreaterThanOrEqualTo(q(code, 115, Exposure.B, h));
      assertThat(q(code, 116, Exposure.B, h)).isGreaterThan(q(code, 115, Exposure.B, h));
      assertThat(q(code, 115, Exposure.C, h)).isGreaterThan(q(code, 115, Exposure.B, h));
      assertThat(q(code, 115, Exposure.D, h)).isGreaterThan(q(code, 115, Exposure.C, h));
    }
  }

  @Test
  void pressureGrowsWithTheSquareOfTheSpeed() {
    assertThat(q(CODE_22, 200, Exposure.C, 33))
        .isCloseTo(4 * q(CODE_22, 100, Exposure.C, 33), within(1e-9));
  }

  /** The constants 0.00256 and 0.613 differ by 0.05 percent. */
  @Test
  void metricAndImperialWorkAgreeWithinTheRoundingOfTheConstants() {
    WindSite site = site(115, Exposure.C);
    Velocity metric = of(VelocityPressure.of(CODE_16, site, 9, new Work(Measure.METRIC)));
    Velocity imperial = of(VelocityPressure.of(CODE_16, site, 9, work()));
    assertThat(metric.pressurePa() / imperial.pressurePa()).isCloseTo(1, within(0.0006));
  }

  private static double q(WindCode code, double mph, Exposure exposure, double heightFt) {
    return psf(velocity(code, site(mph, exposure), heightFt).pressurePa());
  }

  private static double k(WindCode code, Exposure exposure, double heightFt) {
    return of(ExposureCoefficient.of(code, exposure, heightFt * FOOT_M, work()));
  }

  private static WindCode byFormula(WindCode code) {
    return code.with(Cases.choices().with(ExposureMethod.FORMULA));
  }
}
