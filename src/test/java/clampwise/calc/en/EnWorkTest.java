package clampwise.calc.en;

import static clampwise.calc.Shipped.work;
import static clampwise.calc.en.WindDirection.DOWN_THE_SLOPE;
import static clampwise.calc.en.WindDirection.FROM_THE_LEFT;
import static clampwise.calc.en.WindDirection.UP_THE_SLOPE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Interval;
import clampwise.calc.Outcome;
import clampwise.calc.Shipped;
import clampwise.calc.en.EnRoof.Shape;
import clampwise.calc.en.PeakPressure.Annex;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Work;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The written lines of EN 1991, and what stands exactly at a border. */
class EnWorkTest {

  /** Eq. 4.1 and 4.3 with all factors of an annex: 0.9 x 0.8 x 25 = 18 m/s, by hand. */
  @ParameterizedTest
  @EnumSource
  void everyLineOfThePeakPressureIsWhatItsFormulaGives(Measure measure) {
    Work work = new Work(measure);
    Annex annex = new Annex(0.9, 0.8, 1.2, Optional.of(0.2), Optional.of(1.2), Optional.of(0.95));
    PeakPressure peak = peak(10, annex, work);
    assertThat(peak.basicPa()).isCloseTo(0.5 * 1.2 * 18 * 18, within(1e-9));
    assertThat(peak.meanSpeed()).isCloseTo(0.2 * Math.log(200) * 1.2 * 18, within(1e-9));
    assertThat(peak.turbulence()).isCloseTo(0.95 / (1.2 * Math.log(200)), within(1e-12));
    Recomputed.check(work);
    assertThat(work.lines()).extracting(Line::note).contains("given for the national annex");
    Work recommended = new Work(measure);
    peak(10, Annex.recommended(), recommended);
    Recomputed.check(recommended);
    assertThat(recommended.lines()).extracting(Line::note).doesNotContain("given");
  }

  @Test
  void theProfileStartsAboveTheGround() {
    PeakPressure.Site site = new PeakPressure.Site(Annex.recommended(), work());
    assertThat(PeakPressure.of(Shipped.enWind(), "II", 25, 0, site))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({"METRIC, 10", "IMPERIAL, 10", "METRIC, -20", "METRIC, 45", "IMPERIAL, 3"})
  void everyLineOfAZoneIsWhatItsFormulaGives(Measure measure, double degrees) {
    EnRoof roof = EnRoof.duopitch(Math.toRadians(degrees), 30, 20, 8);
    ZoneCoefficients zones = new ZoneCoefficients(Shipped.enWind(), roof, 3);
    Work work = new Work(measure);
    for (RoofZone zone : RoofZones.of(Shipped.enWind(), roof)) {
      zones.pressure(zone, 1000, work);
    }
    Recomputed.check(work);
  }

  /** Table 7.4a, zone I at 5 degrees: only there do the sources disagree. */
  @ParameterizedTest
  @CsvSource({"5, I, true", "10, I, true", "15, I, false", "5, J, false", "-5, I, false"})
  void aDisputedRowIsNotedWhereItIsRead(double degrees, String zone, boolean noted) {
    EnRoof roof = EnRoof.duopitch(Math.toRadians(degrees), 30, 20, 8);
    ZoneCoefficients zones = new ZoneCoefficients(Shipped.enWind(), roof, 10);
    Work pressure = work();
    zones.pressure(DOWN_THE_SLOPE, zone, pressure);
    assertThat(pressure.lines()).isNotEmpty();
    assertThat(disputes(pressure)).isEqualTo(noted);
    Work suction = work();
    zones.suction(DOWN_THE_SLOPE, zone, suction);
    assertThat(suction.lines()).isNotEmpty();
    assertThat(disputes(suction)).isFalse();
  }

  /** The other reading of zone I at 5 degrees changes that zone alone. */
  @Test
  void theOtherReadingLeavesAllOtherZonesAsTheyAre() {
    EnRoof roof = EnRoof.duopitch(Math.toRadians(5), 30, 20, 8);
    EnTables other = new EnTables(Shipped.enWind().byKey(), EnTables.Reading.OTHER);
    RoofWind one = RoofWind.of(Shipped.enWind(), roof, 1000, 10, work()).result().orElseThrow();
    RoofWind two = RoofWind.of(other, roof, 1000, 10, work()).result().orElseThrow();
    assertThat(one.zones()).hasSameSizeAs(two.zones()).isNotEmpty();
    assertThat(one.zones())
        .filteredOn(pressure -> !pressure.zone().name().equals("I"))
        .isNotEmpty()
        .isSubsetOf(two.zones());
  }

  /** Tables 7.2 to 7.4 [library]: flat up to 5, monopitch 5 to 75, duopitch -45 to 75 degrees. */
  @ParameterizedTest
  @CsvSource({"FLAT, 5", "MONOPITCH, 5", "MONOPITCH, 75", "DUOPITCH, -45", "DUOPITCH, 75"})
  void theTablesHoldUpToTheirEnds(Shape shape, double degrees) {
    double pitchRad = Math.toRadians(degrees);
    EnRoof roof =
        shape == Shape.DUOPITCH
            ? EnRoof.duopitch(pitchRad, 30, 20, 8)
            : EnRoof.onePlane(shape, pitchRad, 30, 20, 8);
    assertThat(ZoneCoefficients.outside(Shipped.enWind(), roof)).isEmpty();
  }

  @Test
  void aLevelDuopitchRoofHasTheZonesOfAFlatRoof() {
    EnRoof level = EnRoof.duopitch(0, 20, 10, 5);
    EnRoof flat = new EnRoof(Shape.FLAT, 0, 20, 10, 5, 5, Optional.empty());
    assertThat(RoofZones.of(Shipped.enWind(), level))
        .isNotEmpty()
        .isEqualTo(RoofZones.of(Shipped.enWind(), flat));
  }

  /** 20 m by 4 m and 10 m high: e/10 = 2 m, e/2 = 10 m beyond the far edge, so no zone I. */
  @Test
  void aZoneBeyondTheRoofIsLeftOut() {
    EnRoof flat = EnRoof.onePlane(Shape.FLAT, 0, 20, 4, 10);
    assertThat(RoofZones.of(Shipped.enWind(), flat))
        .filteredOn(zone -> zone.direction() == UP_THE_SLOPE)
        .extracting(RoofZone::name)
        .containsExactly("F", "G", "F", "H");
  }

  /** Case A-E3, 12 by 8 m: F ends 3 m along the eave, and F is worse than G [library]. */
  @ParameterizedTest
  @CsvSource({"0.5, F", "1, F", "3, F", "3.1, G", "8.9, G", "9, F"})
  void onABorderTheWorseZoneHolds(double alongM, String zone) {
    EnRoof gable = EnRoof.duopitch(Math.toRadians(10), 12, 8, 7);
    RoofWind wind = RoofWind.of(Shipped.enWind(), gable, 1439, 10, work()).result().orElseThrow();
    RoofZone found = wind.at(UP_THE_SLOPE, alongM, 0.5).orElseThrow().zone();
    assertThat(found.name()).isEqualTo(zone);
    assertThat(found.direction()).isEqualTo(UP_THE_SLOPE);
    assertThat(wind.at(UP_THE_SLOPE, 13, 0.5)).isEmpty();
  }

  /** Table 7.4a has F to J across the ridge, table 7.4b F to I along it. */
  @Test
  void aDirectionHasTheZonesOfItsTable() {
    EnRoof gable = EnRoof.duopitch(Math.toRadians(10), 12, 8, 7);
    ZoneCoefficients zones = new ZoneCoefficients(Shipped.enWind(), gable, 10);
    assertThat(zones.zones(UP_THE_SLOPE)).containsExactlyInAnyOrder("F", "G", "H", "I", "J");
    assertThat(zones.zones(FROM_THE_LEFT)).containsExactlyInAnyOrder("F", "G", "H", "I");
  }

  @Test
  void zonesThatOnlyTouchARectangleShareNothingWithIt() {
    RoofZone zone = new RoofZone(UP_THE_SLOPE, "G", new Interval(2, 4), new Interval(1, 3));
    assertThat(zone.overlaps(new Interval(4, 5), new Interval(1, 3))).isFalse();
    assertThat(zone.overlaps(new Interval(1, 2), new Interval(1, 3))).isFalse();
    assertThat(zone.overlaps(new Interval(3.9, 5), new Interval(2.9, 5))).isTrue();
    assertThat(zone.holds(3, 4)).isFalse();
    assertThat(zone.holds(4, 3)).isTrue();
  }

  /** 5.3.6 and 6.2: a drift needs a step and snow. */
  @ParameterizedTest
  @CsvSource({"0, 800", "2, 0"})
  void withoutStepOrSnowThereIsNoDrift(double riseM, double groundPa) {
    EnSnow.Site site = new EnSnow.Site(groundPa, 1, 1);
    EnDrift.Step step = new EnDrift.Step(riseM, 20, 10, Optional.empty());
    assertThat(EnDrift.atStep(Shipped.enSnow(), site, step, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
    assertThat(EnDrift.atObstruction(Shipped.enSnow(), site, riseM, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  /** 6.2, from memory: 2 x 0.6 / 0.8 = 1.5, times Ce 1.2 and Ct 0.9; 0.8 beyond. */
  @ParameterizedTest
  @EnumSource
  void exposureAndWarmthCountInDrifts(Measure measure) {
    Work work = new Work(measure);
    EnSnow.Site site = new EnSnow.Site(800, 1.2, 0.9);
    EnDrift drift = EnDrift.atObstruction(Shipped.enSnow(), site, 0.6, work).result().orElseThrow();
    assertThat(drift.wallPa()).isCloseTo(1.5 * 1.2 * 0.9 * 800, within(1e-9));
    assertThat(drift.endPa()).isCloseTo(0.8 * 1.2 * 0.9 * 800, within(1e-9));
    EnDrift.Upper upper = new EnDrift.Upper(Math.toRadians(20), 9);
    EnDrift.atStep(Shipped.enSnow(), site, new EnDrift.Step(3, 9, 3, Optional.of(upper)), work);
    Recomputed.check(work);
  }

  /** 7.2.9 (6), note 2, from memory: cpi 0.2 and -0.3, by hand under 800 Pa. */
  @Test
  void pressureInsideAddsToTheWindOutside() {
    Work work = work();
    assertThat(InternalPressure.awayPa(Shipped.enWind(), -1000, 800, work))
        .isCloseTo(-1160, within(1e-9));
    assertThat(InternalPressure.towardPa(Shipped.enWind(), 200, 800, work))
        .isCloseTo(440, within(1e-9));
    Recomputed.check(work);
  }

  private static boolean disputes(Work work) {
    return work.lines().stream().anyMatch(line -> line.note().startsWith("the sources disagree"));
  }

  private static PeakPressure peak(double heightM, Annex annex, Work work) {
    PeakPressure.Site site = new PeakPressure.Site(annex, work);
    return PeakPressure.of(Shipped.enWind(), "II", 25, heightM, site).result().orElseThrow();
  }
}
