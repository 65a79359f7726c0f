package clampwise.calc.snow;

import static clampwise.calc.Shipped.work;
import static clampwise.calc.snow.Psf.NEW;
import static clampwise.calc.snow.Psf.OLD;
import static clampwise.calc.snow.Psf.basis;
import static clampwise.calc.snow.Psf.pcf;
import static clampwise.calc.snow.Psf.psf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Shipped;
import clampwise.calc.snow.ExposureFactor.RoofExposure;
import clampwise.calc.snow.ExposureFactor.Terrain;
import clampwise.calc.snow.ThermalFactor.Condition;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlatRoofSnowTest {

  /** Case A-N1: open textbook on structural analysis [read], and a public library. */
  @Test
  void aN1FlatRoofOf30PsfGroundSnow() {
    SnowBasis basis = basis(OLD, 30, Risk.II);
    double exposure = exposure(OLD, Terrain.B, RoofExposure.PARTIALLY);
    assertThat(exposure).isEqualTo(1.0);
    assertThat(psf(FlatRoofSnow.pa(basis, exposure, 1, work()))).isCloseTo(21, within(1e-9));
    assertThat(minimumPsf(basis, 0)).isCloseTo(20, within(1e-9));
  }

  /** Case A-N2: published calculation sheet [read]. */
  @Test
  void aN2FullyExposedColdRoof() {
    double exposure = exposure(OLD, Terrain.C, RoofExposure.FULLY);
    assertThat(exposure).isEqualTo(0.9);
    double flatPa = FlatRoofSnow.pa(basis(OLD, 20, Risk.II), exposure, 1.2, work());
    assertThat(psf(flatPa)).isCloseTo(15.12, within(0.005));
  }

  /** Case A-N10: hand calculations beside a public transcription [2nd]. */
  @ParameterizedTest
  @CsvSource({"42.9, II, 1, 1, 30.03", "25, III, 0.9, 1.1, 19.0575"})
  void aN10FlatRoofLoads(double ground, Risk risk, double ce, double ct, double expected) {
    assertThat(psf(FlatRoofSnow.pa(basis(OLD, ground, risk), ce, ct, work())))
        .isCloseTo(expected, within(5e-5));
  }

  /** Worked example 3.8: pg 40, all factors 1.0, 28 psf [read]. */
  @Test
  void example38FlatRoofOf40PsfGroundSnow() {
    assertThat(psf(FlatRoofSnow.pa(basis(OLD, 40, Risk.II), 1, 1, work())))
        .isCloseTo(28, within(0.5));
  }

  /** Cases A-N4, A-N5, A-N6 and A-N7: hand calculations beside a public transcription [2nd]. */
  @ParameterizedTest
  @CsvSource({
    "30, 1.0, 1.14, 23.94, 17.9",
    "40, 0.9, 1.13, 28.48, 19.2",
    "40, 0.9, 1.2, 30.24, 19.2",
    "20, 1.0, 1.11, 15.54, 16.6"
  })
  void flatRoofLoadAndDensityOf722(
      double ground, double ce, double ct, double expected, double density) {
    SnowBasis basis = basis(NEW, ground, Risk.II);
    assertThat(psf(FlatRoofSnow.pa(basis, ce, ct, work()))).isCloseTo(expected, within(0.005));
    assertThat(pcf(SnowDensity.newtonPerM3(basis, work()))).isCloseTo(density, within(0.05));
  }

  /** Case A-N10 [2nd]. */
  @ParameterizedTest
  @CsvSource({"42.9, 19.577", "25, 17.25"})
  void aN10Densities(double ground, double expected) {
    assertThat(pcf(SnowDensity.newtonPerM3(basis(OLD, ground, Risk.II), work())))
        .isCloseTo(expected, within(5e-4));
  }

  /** Eq. 7.7-1: at most 30 pcf [2nd]. */
  @Test
  void noSnowIsHeavierThan30Pcf() {
    assertThat(pcf(SnowDensity.newtonPerM3(basis(OLD, 300, Risk.II), work())))
        .isCloseTo(30, within(1e-9));
  }

  /** Case A-N9: table 7.3-3 of 7-22, values and straight lines between them [2nd]. */
  @ParameterizedTest
  @CsvSource({
    "27.5, 20, 1.065",
    "35, 25, 1.0825",
    "80, 50, 1.18",
    "30, 55, 1.20",
    "5, 60, 1.20",
    "30, 30, 1.14",
    "40, 30, 1.13",
    "20, 20, 1.11",
    "5, 10, 1.20",
    "100, 0, 1.00",
    "45, 35, 1.1425"
  })
  void aN9ThermalFactorOfHeatedRoofs(double ground, double resistance, double expected) {
    assertThat(thermal(NEW, Condition.HEATED, resistance, ground))
        .isCloseTo(expected, within(1e-9));
  }

  @Test
  void anUnknownThermalResistanceTakesTheLargestFactor() {
    ThermalFactor.Warmth unknown = new ThermalFactor.Warmth(Condition.HEATED, Optional.empty());
    clampwise.calc.trail.Work work = work();
    assertThat(ThermalFactor.of(Shipped.snow(NEW), unknown, Psf.pa(40), work)).isEqualTo(1.20);
    assertThat(work.lines().get(0).note()).contains("not given");
  }

  /** Table 7.3-2 [2nd]. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, HEATED, 30, 1.0", "ASCE_7_16, ABOVE_FREEZING, 30, 1.1",
    "ASCE_7_16, COLD_VENTILATED, 26, 1.1", "ASCE_7_16, COLD_VENTILATED, 25, 1.0",
    "ASCE_7_16, UNHEATED, 30, 1.2", "ASCE_7_16, FREEZER, 30, 1.3",
    "ASCE_7_16, GREENHOUSE, 30, 0.85", "ASCE_7_22, ABOVE_FREEZING, 30, 1.2",
    "ASCE_7_22, COLD_VENTILATED, 20, 1.2", "ASCE_7_22, UNHEATED, 30, 1.2",
    "ASCE_7_22, FREEZER, 30, 1.3", "ASCE_7_22, GREENHOUSE, 30, 0.85"
  })
  void thermalFactors(AsceEdition edition, Condition condition, double r, double expected) {
    assertThat(thermal(edition, condition, r, 30)).isEqualTo(expected);
  }

  /** Table 7.3-1 [2nd]. */
  @ParameterizedTest
  @CsvSource({"B, 0.9, 1.0, 1.2", "C, 0.9, 1.0, 1.1", "D, 0.8, 0.9, 1.0"})
  void exposureFactors(Terrain terrain, double fully, double partially, double sheltered) {
    assertThat(exposure(NEW, terrain, RoofExposure.FULLY)).isEqualTo(fully);
    assertThat(exposure(OLD, terrain, RoofExposure.PARTIALLY)).isEqualTo(partially);
    assertThat(exposure(NEW, terrain, RoofExposure.SHELTERED)).isEqualTo(sheltered);
  }

  @Test
  void aboveTheTreeLineNothingShelters() {
    assertThat(exposure(OLD, Terrain.ABOVE_TREE_LINE, RoofExposure.FULLY)).isEqualTo(0.7);
    assertThat(ExposureFactor.of(Shipped.snow(OLD), Terrain.ALASKA, RoofExposure.SHELTERED, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  /** 7.3.4 of 7-16 [2nd] and 7.3.3 of 7-22 [read]; case A-N4: 30 psf. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, 15, II, 15", "ASCE_7_16, 50, II, 20", "ASCE_7_16, 50, IV, 24",
    "ASCE_7_16, 15, III, 16.5", "ASCE_7_22, 30, II, 30", "ASCE_7_22, 100, I, 25",
    "ASCE_7_22, 100, II, 30", "ASCE_7_22, 100, III, 35", "ASCE_7_22, 100, IV, 40",
    "ASCE_7_22, 10, IV, 10"
  })
  void minimumLoads(AsceEdition edition, double ground, Risk risk, double expected) {
    assertThat(minimumPsf(basis(edition, ground, risk), Math.toRadians(14.9)))
        .isCloseTo(expected, within(1e-9));
  }

  @Test
  void aSlopeOf15DegreesHasNoMinimumLoad() {
    assertThat(MinimumSnow.pa(basis(OLD, 30, Risk.II), Math.toRadians(15), work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  /**
   * 7.10: below W / 50 in degrees; +5 psf up to 20 psf in 7-16 [2nd], +8 up to pm,max in 7-22
   * [read].
   */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, 20, II, 0.99, 5", "ASCE_7_16, 20, II, 1.01, 0", "ASCE_7_16, 21, II, 0.5, 0",
    "ASCE_7_16, 0, II, 0.5, 0", "ASCE_7_22, 30, II, 0.5, 8", "ASCE_7_22, 31, II, 0.5, 0",
    "ASCE_7_22, 31, III, 0.5, 8", "ASCE_7_22, 40, IV, 0.99, 8", "ASCE_7_22, 40, IV, 1, 0"
  })
  void rainOnSnow(AsceEdition edition, double ground, Risk risk, double degrees, double expected) {
    double pa =
        RainOnSnow.pa(basis(edition, ground, risk), Math.toRadians(degrees), Psf.m(50), work());
    assertThat(psf(pa)).isCloseTo(expected, within(1e-9));
  }

  private static double minimumPsf(SnowBasis basis, double slopeRad) {
    return psf(MinimumSnow.pa(basis, slopeRad, work()).result().orElseThrow());
  }

  private static double exposure(AsceEdition edition, Terrain terrain, RoofExposure roof) {
    return ExposureFactor.of(Shipped.snow(edition), terrain, roof, work()).result().orElseThrow();
  }

  private static double thermal(
      AsceEdition edition, Condition condition, double resistance, double groundPsf) {
    ThermalFactor.Warmth roof = new ThermalFactor.Warmth(condition, Optional.of(resistance));
    return ThermalFactor.of(Shipped.snow(edition), roof, Psf.pa(groundPsf), work());
  }
}
