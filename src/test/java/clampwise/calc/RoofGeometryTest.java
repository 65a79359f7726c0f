package clampwise.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoofGeometryTest {

  /** Handbook table 2.12. */
  @ParameterizedTest
  @CsvSource({"3, 14.04", "4, 18.43", "6, 26.57", "12, 45.00"})
  void pitchesAreTheAnglesOfHandbookTable212(double rise, double degrees) {
    assertThat(Math.toDegrees(RoofGeometry.slopeRad(rise, 12))).isCloseTo(degrees, within(0.005));
  }

  /** Worked example 3.8: 4:12 has sin .3162, cos .9487 [computed]. */
  @Test
  void fourInTwelveHasTheSineAndCosineOfWorkedExample38() {
    double slopeRad = RoofGeometry.slopeRad(4, 12);
    assertThat(RoofGeometry.riseM(1, slopeRad)).isCloseTo(0.3162, within(5e-5));
    assertThat(RoofGeometry.planM(1, slopeRad)).isCloseTo(0.9487, within(5e-5));
  }

  @Test
  void planAndSlopeLengthsAreInverse() {
    for (double degrees = 0; degrees < 80; degrees += 7) {
      double slopeRad = Math.toRadians(degrees);
      assertThat(RoofGeometry.upM(RoofGeometry.planM(9.63, slopeRad), slopeRad))
          .isCloseTo(9.63, within(1e-12));
    }
  }

  /** ASCE 7 section 26.2: the eave's height up to 10 degrees, else the mean roof height [2nd]. */
  @Test
  void upToTenDegreesTheEaveHeightCounts() {
    double tenRad =
        Shipped.windTables(AsceEdition.ASCE_7_16).row("roof-height").number("eave-up-to");
    assertThat(RoofGeometry.windHeightM(tenRad, 4, 10, Math.toRadians(10))).isEqualTo(4);
    assertThat(RoofGeometry.windHeightM(tenRad, 4, 10, Math.toRadians(10.1))).isGreaterThan(4.8);
  }

  @Test
  void meanRoofHeightIsHalfwayBetweenEaveAndRidge() {
    assertThat(RoofGeometry.meanRoofHeightM(4, 9, RoofGeometry.slopeRad(4, 12)))
        .isCloseTo(5.5, within(1e-12));
  }
}
