package clampwise.calc.snow;

import static clampwise.calc.Shipped.work;
import static clampwise.calc.snow.Psf.NEW;
import static clampwise.calc.snow.Psf.OLD;
import static clampwise.calc.snow.Psf.m;
import static clampwise.calc.snow.Psf.pa;
import static clampwise.calc.snow.Psf.rise;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Shipped;
import clampwise.calc.snow.RoofSnow.Factors;
import clampwise.calc.snow.RoofSnow.Roof;
import clampwise.calc.snow.RoofSnow.Shape;
import clampwise.calc.snow.StepDrift.Drift;
import clampwise.calc.snow.StepDrift.Step;
import clampwise.calc.snow.ThermalFactor.Condition;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The written lines of snow, and what stands exactly at a border. */
class SnowWorkTest {

  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, METRIC, 6, 30", "ASCE_7_16, IMPERIAL, 6, 30", "ASCE_7_16, METRIC, 6, 18",
    "ASCE_7_22, METRIC, 6, 30", "ASCE_7_22, IMPERIAL, 6, 30", "ASCE_7_22, METRIC, 6, 18",
    "ASCE_7_16, METRIC, 0.2, 60", "ASCE_7_22, IMPERIAL, 0.2, 60"
  })
  void everyLineOfARoofIsWhatItsFormulaGives(
      AsceEdition edition, Measure measure, double rise, double widthFt) {
    Work work = new Work(measure);
    boolean narrow = widthFt < 20;
    Roof roof = new Roof(Shape.RIDGED, rise(rise), m(widthFt), narrow, Psf.rough());
    RoofSnow.of(basis(edition, 20, work), roof, new Factors(0.9, 1.1), work);
    Recomputed.check(work);
    assertThat(symbols(work).anyMatch("I_s"::equals)).isEqualTo(edition == OLD);
    assertThat(symbols(work).anyMatch("p_b"::equals)).isEqualTo(rise < 1);
  }

  /** A free drift, one held by the step, and in 7-16 one of a short fetch. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, METRIC, 20, 300, 35", "ASCE_7_16, IMPERIAL, 3, 300, 200",
    "ASCE_7_16, METRIC, 20, 8, 15", "ASCE_7_22, METRIC, 20, 300, 35",
    "ASCE_7_22, IMPERIAL, 3, 300, 200", "ASCE_7_22, METRIC, 20, 8, 15"
  })
  void everyLineOfAStepIsWhatItsFormulaGives(
      AsceEdition edition, Measure measure, double riseFt, double upperFt, double lowerFt) {
    Work work = new Work(measure);
    Step step = new Step(m(riseFt), Optional.of(m(upperFt)), Optional.of(m(lowerFt)), pa(15));
    StepDrift drifts = StepDrift.of(basis(edition, 20, work), step, work).result().orElseThrow();
    assertThat(drifts.drifts()).extracting(Drift::name).containsExactly("leeward", "windward");
    Recomputed.check(work);
    assertThat(symbols(work).anyMatch("I_s"::equals)).isEqualTo(edition == OLD);
  }

  @ParameterizedTest
  @CsvSource({"METRIC", "IMPERIAL"})
  void everyLineOfSlidingSnowIsWhatItsFormulaGives(Measure measure) {
    Work work = new Work(measure);
    SlidingSnow.Upper upper = new SlidingSnow.Upper(pa(28), m(30), rise(4), true);
    SlidingSnow.of(Shipped.snow(NEW), upper, work);
    Recomputed.check(work);
  }

  /** 7.7.1: no drift where hc / hb is below 0.2; 16.6 psf of 16.6 pcf lie 1 ft deep [2nd]. */
  @Test
  void aStepThatStandsAFifthOfTheDepthAboveTheSnowHasADrift() {
    assertThat(stepOf(1.2, 20, 16.6)).isInstanceOf(Outcome.Result.class);
    assertThat(stepOf(1.199, 20, 16.6)).isInstanceOf(Outcome.NotApplicable.class);
  }

  @Test
  void whereNoSnowLiesNoneDrifts() {
    Outcome<StepDrift> none = new Outcome.NotApplicable<>("no snow, no drift");
    assertThat(stepOf(10, 0, 15)).isEqualTo(none);
    assertThat(stepOf(10, 20, 0)).isEqualTo(none);
  }

  /** Each drift alone, by hand: a triangle of 1000 Pa over 4 m and one of 600 Pa over 8 m. */
  @Test
  void theLargerOfTwoDriftsCounts() {
    Drift leeward = new Drift("leeward", 1, 4, 1000);
    Drift windward = new Drift("windward", 0.6, 8, 600);
    StepDrift both = new StepDrift(List.of(leeward, windward), 2);
    assertThat(both.surchargePa(0)).isEqualTo(1000);
    assertThat(both.surchargePa(3.2)).isCloseTo(360, within(1e-9));
    assertThat(both.surchargePa(6)).isCloseTo(150, within(1e-9));
    assertThat(both.surchargePa(8)).isZero();
  }

  /** On the border of two loads the larger one stands. */
  @Test
  void theNearerLoadHoldsUpToItsReach() {
    SnowCase snow = new SnowCase("unbalanced, leeward slope", "p_lee", 2000, 3, 1000);
    assertThat(snow.atPa(3)).isEqualTo(2000);
    assertThat(snow.atPa(3.001)).isEqualTo(1000);
    SlidingSnow sliding = new SlidingSnow(4500, 4.5, 1000);
    assertThat(sliding.atPa(4.5)).isEqualTo(1000);
    assertThat(sliding.atPa(4.501)).isZero();
  }

  /** 7.10 of 7-16: up to 20 psf, below W / 50 in degrees [2nd]. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20|0.5|the slope is below the limit and the ground snow within it",
        "20|1.5|the slope is not below the limit",
        "21|0.5|the ground snow is outside"
      })
  void theLineSaysWhyRainCountsOrNot(double groundPsf, double degrees, String note) {
    Work work = work();
    RainOnSnow.pa(Psf.basis(OLD, groundPsf, Risk.II), Math.toRadians(degrees), m(50), work);
    assertThat(last(work).note()).isEqualTo(note);
  }

  /** 7.4.1 of 7-16: R 30 in an unventilated warm roof [2nd]. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ASCE_7_16|30|slippery",
        "ASCE_7_16|29|other surface: too little thermal resistance",
        "ASCE_7_16||other surface: thermal resistance not given",
        "ASCE_7_22||slippery; no condition on thermal resistance was found in this edition"
      })
  void theLineSaysWhichSlopeCurveHolds(AsceEdition edition, Double resistance, String curve) {
    Work work = work();
    SlopeFactor.Surface metal =
        new SlopeFactor.Surface(true, false, Optional.ofNullable(resistance), false);
    SlopeFactor.of(Shipped.snow(edition), rise(4), 1.0, metal, work);
    assertThat(last(work).note()).endsWith(", " + curve);
  }

  /** Table 7.3-2 of 7-16: a cold ventilated roof counts as cold from R 25 on [2nd]. */
  @ParameterizedTest
  @CsvSource({"COLD_VENTILATED, true", "UNHEATED, false"})
  void anUnknownResistanceIsAnAssumptionOnlyWhereItDecides(Condition condition, boolean assumed) {
    Work work = work();
    ThermalFactor.Warmth roof = new ThermalFactor.Warmth(condition, Optional.empty());
    ThermalFactor.of(Shipped.snow(OLD), roof, pa(30), work);
    assertThat(last(work).note().startsWith("thermal resistance not given")).isEqualTo(assumed);
  }

  @Test
  void aKnownResistanceIsNoAssumption() {
    Work work = work();
    ThermalFactor.Warmth roof =
        new ThermalFactor.Warmth(Condition.COLD_VENTILATED, Optional.of(30.0));
    ThermalFactor.of(Shipped.snow(OLD), roof, pa(30), work);
    assertThat(last(work).note()).isEmpty();
  }

  private static Outcome<StepDrift> stepOf(double riseFt, double groundPsf, double balancedPsf) {
    Step step = new Step(m(riseFt), Optional.of(m(100)), Optional.empty(), pa(balancedPsf));
    return StepDrift.of(Psf.basis(OLD, groundPsf, Risk.II), step, work());
  }

  private static SnowBasis basis(AsceEdition edition, double groundPsf, Work work) {
    return SnowBasis.of(Shipped.snow(edition), pa(groundPsf), Risk.IV, Optional.of(0.5), work);
  }

  private static Line last(Work work) {
    return work.lines().get(work.lines().size() - 1);
  }

  private static Stream<String> symbols(Work work) {
    return work.lines().stream()
        .flatMap(line -> Stream.concat(Stream.of(line.result()), line.inputs().stream()))
        .map(Term::symbol);
  }
}
