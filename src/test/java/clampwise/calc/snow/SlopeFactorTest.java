package clampwise.calc.snow;

import static clampwise.calc.Shipped.work;
import static clampwise.calc.snow.Psf.NEW;
import static clampwise.calc.snow.Psf.OLD;
import static clampwise.calc.snow.Psf.rise;
import static clampwise.calc.snow.Psf.rough;
import static clampwise.calc.snow.Psf.slippery;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Shipped;
import clampwise.calc.snow.SlopeFactor.Surface;
import clampwise.calc.trail.Work;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlopeFactorTest {

  /** Case A-N8: tests of a public library, and mid-points of the curves [computed]. */
  @Test
  void aN8WarmSlipperyRoofOfFourInTwelve() {
    assertThat(of(OLD, rise(4), 1.0, slippery())).isCloseTo(0.7933, within(1e-4));
  }

  @ParameterizedTest
  @CsvSource({"37.5, 1.0", "40, 1.1", "42.5, 1.2"})
  void aN8HalfTheSnowStaysInTheMiddleOfEachSlipperyCurve(double degrees, double thermal) {
    assertThat(of(OLD, Math.toRadians(degrees), thermal, slippery())).isCloseTo(0.5, within(1e-9));
  }

  /** Figure 7.4-1, all six curves [computed from the knees, which are 2nd]. */
  @ParameterizedTest
  @CsvSource({
    "18.435, 1, 1, 1, .7933, .8594, .9376",
    "26.565, 1, 1, 1, .6682, .7239, .7897",
    "45, .6250, .7692, 1, .3846, .4167, .4545",
    "60, .2500, .3077, .4000, .1538, .1667, .1818",
    "70, 0, 0, 0, 0, 0, 0",
    "80, 0, 0, 0, 0, 0, 0"
  })
  void allCurvesFallFromTheirKneesToSeventyDegrees(
      double degrees, double a, double b, double c, double as, double bs, double cs) {
    double slopeRad = Math.toRadians(degrees);
    assertThat(of(OLD, slopeRad, 1.0, rough())).isCloseTo(a, within(1e-4));
    assertThat(of(OLD, slopeRad, 1.1, rough())).isCloseTo(b, within(1e-4));
    assertThat(of(OLD, slopeRad, 1.2, rough())).isCloseTo(c, within(1e-4));
    assertThat(of(OLD, slopeRad, 1.0, slippery())).isCloseTo(as, within(1e-4));
    assertThat(of(OLD, slopeRad, 1.1, slippery())).isCloseTo(bs, within(1e-4));
    assertThat(of(OLD, slopeRad, 1.2, slippery())).isCloseTo(cs, within(1e-4));
  }

  /** Worked example 3.8: warm and slippery from memory; cold, Ct 1.1 at 26.6 degrees [read]. */
  @Test
  void example38SlipperyRoofs() {
    double warm = of(OLD, rise(4), 1.0, slippery());
    assertThat(warm).isCloseTo(0.793, within(5e-4));
    assertThat(warm * 28).isCloseTo(22.2, within(0.05));
    assertThat(of(OLD, Math.toRadians(26.6), 1.1, slippery())).isCloseTo(0.72, within(5e-3));
  }

  /** Case A-N6: hand calculation beside a public transcription [2nd]. */
  @Test
  void aN6ColdSlipperyRoofOfEightInTwelve() {
    assertThat(Math.toDegrees(rise(8))).isCloseTo(33.69, within(5e-3));
    double factor = of(NEW, rise(8), 1.2, slippery());
    assertThat(factor).isCloseTo(0.660, within(5e-4));
    assertThat(factor * 30.24).isCloseTo(19.96, within(5e-3));
  }

  /** The panels of the editions differ: Ct 1.1 is cold in 7-16, warm in 7-22 [2nd]. */
  @Test
  void aThermalFactorOf11IsWarmIn722() {
    assertThat(of(OLD, Math.toRadians(45), 1.1, rough())).isCloseTo(0.7692, within(1e-4));
    assertThat(of(NEW, Math.toRadians(45), 1.1, rough())).isCloseTo(0.6250, within(1e-4));
    assertThat(of(NEW, Math.toRadians(45), 1.11, rough())).isCloseTo(0.7692, within(1e-4));
  }

  @Test
  void anArrayThatHoldsTheSnowTakesTheSlipperyCurveAway() {
    Surface held = new Surface(true, true, Optional.of(30.0), false);
    Work work = work();
    double factor = SlopeFactor.of(Shipped.snow(OLD), rise(4), 1.0, held, work);
    assertThat(factor).isEqualTo(1);
    assertThat(work.lines().get(0).note()).contains("holds the snow");
  }

  /** 7.4.1 of 7-16: R 30, or R 20 where ventilated [2nd]. */
  @ParameterizedTest
  @CsvSource({"30, false, 0.7933", "29.9, false, 1", "20, true, 0.7933", "19.9, true, 1"})
  void aWarmSlipperyRoofNeedsItsInsulation(double resistance, boolean ventilated, double expected) {
    Surface surface = new Surface(true, false, Optional.of(resistance), ventilated);
    assertThat(of(OLD, rise(4), 1.0, surface)).isCloseTo(expected, within(1e-4));
  }

  @Test
  void withoutAKnownInsulationAWarmRoofCountsAsRough() {
    Surface unknown = new Surface(true, false, Optional.empty(), false);
    assertThat(of(OLD, rise(4), 1.0, unknown)).isEqualTo(1);
    assertThat(of(NEW, rise(4), 1.0, unknown)).isCloseTo(0.7933, within(1e-4));
  }

  @Test
  void noFactorRisesWithTheSlope() {
    for (double thermal : new double[] {0.85, 1.0, 1.1, 1.2, 1.3}) {
      for (int degrees = 1; degrees <= 90; degrees++) {
        assertThat(of(NEW, Math.toRadians(degrees), thermal, slippery()))
            .isLessThanOrEqualTo(of(NEW, Math.toRadians(degrees - 1), thermal, slippery()));
      }
    }
  }

  private static double of(AsceEdition edition, double slope, double thermal, Surface surface) {
    return SlopeFactor.of(Shipped.snow(edition), slope, thermal, surface, work());
  }
}
