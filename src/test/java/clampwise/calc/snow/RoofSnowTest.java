package clampwise.calc.snow;

import static clampwise.calc.Shipped.work;
import static clampwise.calc.snow.Psf.NEW;
import static clampwise.calc.snow.Psf.OLD;
import static clampwise.calc.snow.Psf.basis;
import static clampwise.calc.snow.Psf.feet;
import static clampwise.calc.snow.Psf.m;
import static clampwise.calc.snow.Psf.psf;
import static clampwise.calc.snow.Psf.rise;
import static clampwise.calc.snow.Psf.windy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.snow.RoofSnow.Factors;
import clampwise.calc.snow.RoofSnow.Roof;
import clampwise.calc.snow.RoofSnow.Shape;
import org.junit.jupiter.api.Test;

class RoofSnowTest {

  /**
   * Case A-N3: commentary example C7.6, 7-16, through a public library and a transcription [2nd].
   */
  @Test
  void aN3UnbalancedGableOfSixInTwelve() {
    RoofSnow snow = gable(basis(OLD, 30, Risk.II), 6, 30, 1.1);
    assertThat(psf(snow.balancedPa())).isCloseTo(23.1, within(0.05));
    SnowCase windward = named(snow, "unbalanced, windward slope");
    SnowCase leeward = named(snow, "unbalanced, leeward slope");
    assertThat(psf(windward.atPa(0))).isCloseTo(6.93, within(5e-3));
    assertThat(psf(leeward.nearRidgePa())).isCloseTo(46.64, within(5e-3));
    assertThat(psf(leeward.nearRidgePa()) - 23.1).isCloseTo(23.54, within(5e-3));
    assertThat(feet(leeward.nearRidgeM())).isCloseTo(7.02, within(5e-3));
    assertThat(leeward.beyondPa()).isEqualTo(snow.balancedPa());
  }

  /** Case A-N3: hd 1.86 ft, density 17.9 pcf [2nd]. */
  @Test
  void aN3HeightOfTheDrift() {
    SnowBasis basis = basis(OLD, 30, Risk.II);
    double densityNm3 = SnowDensity.newtonPerM3(basis, work());
    assertThat(Psf.pcf(densityNm3)).isCloseTo(17.9, within(0.05));
    assertThat(feet(DriftHeight.m(basis, m(30), densityNm3, "h_d", work()).result().orElseThrow()))
        .isCloseTo(1.86, within(5e-3));
  }

  /** Case A-N6: 8 on 12 is above 7 on 12, no unbalanced load [2nd]. */
  @Test
  void aN6ASteepGableHasNoUnbalancedLoad() {
    RoofSnow snow = gable(basis(NEW, 40, Risk.II), 8, 30, 1.2);
    assertThat(snow.cases()).extracting(SnowCase::name).containsExactly("balanced");
    assertThat(snow.missing()).isEmpty();
  }

  @Test
  void without722sWinterWindTheUnbalancedLoadIsMissing() {
    assertThat(gable(basis(NEW, 40, Risk.II), 4, 30, 1.2).missing())
        .hasValueSatisfying(reason -> assertThat(reason).contains("W2"));
    assertThat(gable(windy(40, 0.5), 4, 30, 1.2).missing()).isEmpty();
  }

  /** 7.6.1: up to 20 ft with simple rafters Is pg on the leeward slope, none on the other [2nd]. */
  @Test
  void aNarrowRoofWithSimpleRaftersIsLoadedOnOneSide() {
    SnowBasis basis = basis(OLD, 30, Risk.III);
    Roof roof = new Roof(Shape.RIDGED, rise(6), m(20), true, Psf.rough());
    RoofSnow snow = RoofSnow.of(basis, roof, new Factors(1, 1), work());
    assertThat(psf(named(snow, "unbalanced, leeward slope").atPa(m(19))))
        .isCloseTo(33, within(1e-9));
    assertThat(named(snow, "unbalanced, windward slope").atPa(0)).isZero();
  }

  /** 7-16: below 20 ft without simple rafters the fetch counts as 20 ft [2nd]. */
  @Test
  void aNarrowRoofWithoutSimpleRaftersDriftsAsOneOf20Feet() {
    SnowBasis basis = basis(OLD, 30, Risk.II);
    assertThat(named(gable(basis, 6, 12, 1.0), "unbalanced, leeward slope"))
        .isEqualTo(named(gable(basis, 6, 20, 1.0), "unbalanced, leeward slope"));
  }

  /** 7.6.1: from 2.38 to 30.2 degrees [2nd]. */
  @Test
  void unbalancedLoadsEndAtTheirSlopes() {
    assertThat(unbalanced(2.37)).isInstanceOf(Outcome.NotApplicable.class);
    assertThat(unbalanced(2.38)).isInstanceOf(Outcome.Result.class);
    assertThat(unbalanced(30.2)).isInstanceOf(Outcome.Result.class);
    assertThat(unbalanced(30.3)).isInstanceOf(Outcome.NotApplicable.class);
  }

  @Test
  void aMonoslopeHasNoRidgeToDriftOver() {
    Roof roof = new Roof(Shape.MONOSLOPE, rise(1), m(60), false, Psf.rough());
    RoofSnow snow = RoofSnow.of(basis(OLD, 18, Risk.II), roof, new Factors(1, 1), work());
    assertThat(snow.cases()).extracting(SnowCase::name).containsExactly("balanced", "minimum");
  }

  /** 7.10: 12.6 + 5 = 17.6 psf against the minimum of 18 psf. */
  @Test
  void rainCountsOnTheBalancedLoadOnly() {
    Roof roof = new Roof(Shape.FLAT, Math.toRadians(1), m(60), false, Psf.rough());
    RoofSnow snow = RoofSnow.of(basis(OLD, 18, Risk.II), roof, new Factors(1, 1), work());
    assertThat(psf(named(snow, "balanced with rain").atPa(0))).isCloseTo(17.6, within(1e-9));
    assertThat(snow.governing(0).name()).isEqualTo("minimum");
    assertThat(psf(snow.largestPa(0))).isCloseTo(18, within(1e-9));
  }

  @Test
  void nearTheRidgeTheDriftGovernsAndBelowItTheBalancedLoad() {
    RoofSnow snow = gable(basis(OLD, 30, Risk.II), 6, 30, 1.1);
    assertThat(snow.governing(m(3)).name()).isEqualTo("unbalanced, leeward slope");
    assertThat(snow.largestPa(m(10))).isEqualTo(snow.balancedPa());
  }

  @Test
  void allLoadsButDriftsGrowInStepWithTheGroundSnow() {
    RoofSnow once = gable(basis(OLD, 30, Risk.II), 4, 30, 1.0);
    RoofSnow twice = gable(basis(OLD, 60, Risk.II), 4, 30, 1.0);
    assertThat(twice.balancedPa()).isCloseTo(2 * once.balancedPa(), within(1e-9));
    assertThat(twice.largestPa(0)).isGreaterThan(once.largestPa(0));
  }

  private static Outcome<UnbalancedSnow> unbalanced(double degrees) {
    UnbalancedSnow.Ridge ridge =
        new UnbalancedSnow.Ridge(Math.toRadians(degrees), m(30), false, 1000, 2800);
    return UnbalancedSnow.of(basis(OLD, 30, Risk.II), ridge, work());
  }

  private static RoofSnow gable(SnowBasis basis, double rise, double widthFt, double thermal) {
    Roof roof = new Roof(Shape.RIDGED, rise(rise), m(widthFt), false, Psf.rough());
    return RoofSnow.of(basis, roof, new Factors(1, thermal), work());
  }

  private static SnowCase named(RoofSnow snow, String name) {
    return snow.cases().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }
}
