package clampwise.calc.en;

import static clampwise.calc.en.WindDirection.DOWN_THE_SLOPE;
import static clampwise.calc.en.WindDirection.FROM_THE_LEFT;
import static clampwise.calc.en.WindDirection.FROM_THE_RIGHT;
import static clampwise.calc.en.WindDirection.UP_THE_SLOPE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Interval;
import clampwise.calc.Shipped;
import clampwise.calc.en.EnRoof.Shape;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RoofZonesTest {

  private static final double PITCH = Math.toRadians(10);
  private static final EnRoof GABLE = EnRoof.duopitch(PITCH, 12, 8, 7);

  /** Case A-E1: h 8, b 32, wind on the gable: e 16 m [read]. */
  @Test
  void aE1LengthOfTheZones() {
    assertThat(ZoneSizes.of(Shipped.enWind(), 32, 8, Shipped.work()).lengthM()).isEqualTo(16);
  }

  /**
   * Case A-E3, wind across the ridge: strip 1.2 m, F 3.0 m, H to 4.0, J to 5.2, I to 8.0 [library].
   */
  @Test
  void aE3ZonesAcrossTheRidge() {
    plan(zone(GABLE, UP_THE_SLOPE, "F").up(), 0, 1.2);
    is(zone(GABLE, UP_THE_SLOPE, "F").along(), 0, 3);
    is(zone(GABLE, UP_THE_SLOPE, "G").along(), 3, 9);
    plan(zone(GABLE, UP_THE_SLOPE, "H").up(), 1.2, 4);
    is(zone(GABLE, UP_THE_SLOPE, "H").along(), 0, 12);
    plan(zone(GABLE, DOWN_THE_SLOPE, "J").up(), 4 - 1.2, 4);
    plan(zone(GABLE, DOWN_THE_SLOPE, "I").up(), 0, 8 - 5.2);
  }

  /** Case A-E3, wind along the ridge: e 8, strip 0.8, F 2.0 wide, H to 4.0, I to 12 [library]. */
  @Test
  void aE3ZonesAlongTheRidge() {
    is(zone(GABLE, FROM_THE_LEFT, "F").along(), 0, 0.8);
    plan(zone(GABLE, FROM_THE_LEFT, "F").up(), 0, 2);
    plan(zone(GABLE, FROM_THE_LEFT, "G").up(), 2, 4);
    is(zone(GABLE, FROM_THE_LEFT, "H").along(), 0.8, 4);
    is(zone(GABLE, FROM_THE_LEFT, "I").along(), 4, 12);
    is(zone(GABLE, FROM_THE_RIGHT, "F").along(), 11.2, 12);
    is(zone(GABLE, FROM_THE_RIGHT, "I").along(), 0, 8);
  }

  /** Case A-E4: 10 by 20 m, h 5, wind on the long side: strip 1.0, F 2.5, H to 5 [library]. */
  @Test
  void aE4ZonesOfAFlatRoof() {
    EnRoof flat = EnRoof.onePlane(Shape.FLAT, 0, 20, 10, 5);
    is(zone(flat, UP_THE_SLOPE, "F").up(), 0, 1);
    is(zone(flat, UP_THE_SLOPE, "F").along(), 0, 2.5);
    is(zone(flat, UP_THE_SLOPE, "H").up(), 1, 5);
    is(zone(flat, UP_THE_SLOPE, "I").up(), 5, 10);
    is(zone(flat, DOWN_THE_SLOPE, "F").up(), 9, 10);
  }

  /** Figure 7.7: wind on the high eave loads the high edge; along the eaves two kinds of corner. */
  @Test
  void aMonopitchRoofHasItsCornersWhereTheWindStrikes() {
    EnRoof mono = EnRoof.onePlane(Shape.MONOPITCH, PITCH, 12, 8, 7);
    plan(zone(mono, UP_THE_SLOPE, "F").up(), 0, 1.2);
    plan(zone(mono, UP_THE_SLOPE, "H").up(), 1.2, 8);
    plan(zone(mono, DOWN_THE_SLOPE, "F").up(), 6.8, 8);
    plan(zone(mono, FROM_THE_LEFT, "F-low").up(), 0, 2);
    plan(zone(mono, FROM_THE_LEFT, "F-up").up(), 6, 8);
    plan(zone(mono, FROM_THE_LEFT, "G").up(), 2, 6);
  }

  /** Figure 7.8, negative pitch: the outer edge is the high one. */
  @Test
  void aRoofThatFallsToTheMiddleHasItsStripAtTheHighEdge() {
    EnRoof trough = EnRoof.duopitch(-PITCH, 12, 8, 7);
    plan(zone(trough, DOWN_THE_SLOPE, "F").up(), 4 - 1.2, 4);
    plan(zone(trough, UP_THE_SLOPE, "J").up(), 0, 1.2);
    plan(zone(trough, FROM_THE_LEFT, "F").up(), 2, 4);
  }

  @ParameterizedTest
  @CsvSource({"DUOPITCH, 10", "DUOPITCH, -10", "MONOPITCH, 20", "FLAT, 0", "DUOPITCH, 3"})
  void zonesCoverThePlaneOnceForEachDirection(Shape shape, double degrees) {
    double pitchRad = Math.toRadians(degrees);
    EnRoof roof =
        shape == Shape.DUOPITCH
            ? EnRoof.duopitch(pitchRad, 30, 18, 6)
            : EnRoof.onePlane(shape, pitchRad, 30, 18, 6);
    for (WindDirection direction : WindDirection.values()) {
      double areaM2 =
          RoofZones.of(Shipped.enWind(), roof).stream()
              .filter(zone -> zone.direction() == direction)
              .mapToDouble(zone -> zone.along().lengthM() * zone.up().lengthM())
              .sum();
      assertThat(areaM2).as(direction.name()).isCloseTo(30 * roof.upM(), within(1e-4));
    }
  }

  @ParameterizedTest
  @EnumSource(WindDirection.class)
  void everyPointLiesInAZone(WindDirection direction) {
    List<RoofZone> zones = RoofZones.of(Shipped.enWind(), GABLE);
    for (double along = 0; along <= 12; along += 0.37) {
      for (double up = 0; up <= 4; up += 0.29) {
        double a = along;
        double u = up;
        assertThat(zones)
            .filteredOn(zone -> zone.direction() == direction)
            .anyMatch(zone -> zone.holds(a, u));
      }
    }
  }

  /** An uneven gable: the far slope is 2 m of plan, ours 6 m. */
  @Test
  void behindAnUnevenRidgeTheStripStartsAtTheRidge() {
    EnRoof uneven = new EnRoof(Shape.DUOPITCH, PITCH, 12, 8, 6, 7, java.util.Optional.empty());
    plan(zone(uneven, UP_THE_SLOPE, "H").up(), 1.2, 6);
    plan(zone(uneven, DOWN_THE_SLOPE, "J").up(), 4.8, 6);
    plan(zone(uneven, DOWN_THE_SLOPE, "I").up(), 0, 4.8);
  }

  private static RoofZone zone(EnRoof roof, WindDirection direction, String name) {
    return RoofZones.of(Shipped.enWind(), roof).stream()
        .filter(zone -> zone.direction() == direction && zone.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static void plan(Interval up, double from, double to) {
    is(up, from / Math.cos(PITCH), to / Math.cos(PITCH));
  }

  private static void is(Interval interval, double from, double to) {
    assertThat(interval.fromM()).isCloseTo(from, within(1e-6));
    assertThat(interval.toM()).isCloseTo(to, within(1e-6));
  }
}
