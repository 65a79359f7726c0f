package clampwise.calc.en;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.Shipped;
import clampwise.calc.en.PeakPressure.Annex;
import clampwise.calc.en.PeakPressure.Site;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PeakPressureTest {

  /** Case A-E1: guide to actions on single-storey steel buildings, appendix B [read]; 0.5 %. */
  @Test
  void aE1IndustrialBuildingInTerrainIii() {
    Work work = new Work(Measure.METRIC);
    PeakPressure peak = peak("III", 26, 8, work);
    assertThat(peak.basicPa()).isCloseTo(422.5, within(0.05));
    assertThat(value(work, "k_r")).isCloseTo(0.215, within(5e-4));
    assertThat(value(work, "c_r")).isCloseTo(0.706, within(2e-3));
    assertThat(value(work, "c_e")).isCloseTo(1.56, within(0.01));
    assertThat(peak.peakPa()).isCloseTo(659, within(0.005 * 659));
    assertThat(peak.peakPa()).isCloseTo(661.8, within(0.05));
  }

  /** Case A-E2: a printed calculation [read]. */
  @Test
  void aE2PrintedCalculationInTerrainIii() {
    Work work = new Work(Measure.METRIC);
    PeakPressure peak = peak("III", 22, 13.48, work);
    assertThat(peak.basicPa()).isCloseTo(303, within(0.5));
    assertThat(value(work, "k_r")).isCloseTo(0.215, within(5e-4));
    assertThat(value(work, "c_r")).isCloseTo(0.82, within(5e-3));
    assertThat(peak.meanSpeed()).isCloseTo(18.0, within(0.05));
    assertThat(peak.turbulence()).isCloseTo(0.263, within(5e-4));
    assertThat(peak.peakPa()).isCloseTo(580, within(5.0));
    assertThat(peak.peakPa()).isCloseTo(577, within(0.5));
  }

  /** Cases A-E3 and A-E4: tests of a public library. */
  @ParameterizedTest
  @CsvSource({"I, 30, 7, 1439, 0.5", "II, 25, 5, 753.6, 0.05", "II, 25, 30, 1208.5, 0.05"})
  void aE3AndAE4PeakPressures(String terrain, double speed, double h, double pa, double tolerance) {
    assertThat(peak(terrain, speed, h, Shipped.work()).peakPa()).isCloseTo(pa, within(tolerance));
  }

  /** Terrain factors [computed from Eq. 4.5]. */
  @ParameterizedTest
  @CsvSource({"I, 0.1698", "II, 0.1900", "III, 0.2154", "IV, 0.2343"})
  void terrainFactors(String terrain, double expected) {
    Work work = new Work(Measure.METRIC);
    peak(terrain, 25, 10, work);
    assertThat(value(work, "k_r")).isCloseTo(expected, within(5e-5));
  }

  /** Table 4.1 [library]: below the least height that height counts. */
  @ParameterizedTest
  @CsvSource({"0, 1", "I, 1", "II, 2", "III, 5", "IV, 10"})
  void nearTheGroundThePressureStaysTheSame(String terrain, double leastM) {
    double least = peak(terrain, 25, leastM, Shipped.work()).peakPa();
    assertThat(peak(terrain, 25, leastM / 2, Shipped.work()).peakPa()).isEqualTo(least);
    assertThat(peak(terrain, 25, leastM * 1.1, Shipped.work()).peakPa()).isGreaterThan(least);
  }

  @Test
  void above200MetresTheProfileEnds() {
    assertThat(of("II", 25, 200.1, Annex.recommended())).isInstanceOf(Outcome.NotApplicable.class);
    assertThat(of("II", 25, 200, Annex.recommended())).isInstanceOf(Outcome.Result.class);
    assertThat(of("V", 25, 20, Annex.recommended())).isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 8, 20, 60, 150})
  void pressureGrowsWithHeightOpennessAndTheSquareOfTheSpeed(double h) {
    double here = peak("II", 25, h, Shipped.work()).peakPa();
    assertThat(peak("II", 25, h + 5, Shipped.work()).peakPa()).isGreaterThan(here);
    assertThat(peak("I", 25, h, Shipped.work()).peakPa()).isGreaterThan(here);
    assertThat(peak("III", 25, h, Shipped.work()).peakPa()).isLessThan(here);
    assertThat(peak("II", 50, h, Shipped.work()).peakPa()).isCloseTo(4 * here, within(1e-6));
  }

  @Test
  void theNationalAnnexDecides() {
    Annex annex = new Annex(0.9, 1, 1, Optional.of(0.2), Optional.of(1.2), Optional.empty());
    double pa = of("II", 25, 10, annex).result().orElseThrow().peakPa();
    double mean = 0.2 * Math.log(10 / 0.05) * 0.9 * 25;
    double expected = (1 + 7 / Math.log(200)) * 0.5 * 1.2 * mean * mean;
    assertThat(pa).isCloseTo(expected, within(1e-9));
  }

  @Test
  void recommendedValuesAreNamedAsAssumptions() {
    Work work = new Work(Measure.METRIC);
    peak("II", 25, 10, work);
    assertThat(work.lines())
        .filteredOn(line -> line.result().symbol().equals("rho"))
        .extracting(Line::note)
        .containsExactly("assumption: recommended value, none given");
  }

  private static PeakPressure peak(String terrain, double speed, double heightM, Work work) {
    return PeakPressure.of(
            Shipped.enWind(), terrain, speed, heightM, new Site(Annex.recommended(), work))
        .result()
        .orElseThrow();
  }

  private static Outcome<PeakPressure> of(
      String terrain, double speed, double heightM, Annex annex) {
    Site site = new Site(annex, Shipped.work());
    return PeakPressure.of(Shipped.enWind(), terrain, speed, heightM, site);
  }

  private static double value(Work work, String symbol) {
    return work.lines().stream()
        .map(Line::result)
        .filter(term -> term.symbol().equals(symbol))
        .findFirst()
        .orElseThrow()
        .si();
  }
}
