package clampwise.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Shape;
import clampwise.calc.ZoneWidth.Widths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ZoneWidthTest {

  private static final double FOOT_M = 0.3048;

  /** Published worked case, quoted in worked example 3.8 [read]: min(6 ft, 8 ft) = 6 ft. */
  @Test
  void aBuildingOf60By100FeetAnd20FeetHighHasZonesOf6Feet() {
    assertThat(widths(Shape.GABLE, 18.43, 60, 20).edgeM() / FOOT_M).isCloseTo(6, within(1e-9));
  }

  /** ASCE 7 figures 30.3-2B and following, dimension a; arithmetic of the rule [computed]. */
  @ParameterizedTest
  @CsvSource({
    "40, 10, 4.0", // 0.4 h and 0.1 B agree
    "100, 12, 4.8", // 0.4 h governs
    "20, 20, 3.0", // never below 3 ft
    "200, 15, 8.0", // never below 0.04 B
    "120, 30, 12.0" // not 3 ft
  })
  void theRuleForATakesTheGoverningTerm(double leastFt, double heightFt, double aFt) {
    assertThat(widths(Shape.GABLE, 20, leastFt, heightFt).edgeM() / FOOT_M)
        .isCloseTo(aFt, within(1e-9));
  }

  /** Low slope: 0.6 h and 0.2 h, figure 30.3-2A [2nd]. */
  @ParameterizedTest
  @CsvSource({"FLAT, 1", "GABLE, 7", "HIP, 5", "MONOSLOPE, 3"})
  void lowSlopesTakeTheirWidthsFromTheHeightAlone(Shape shape, double degrees) {
    Widths widths = widths(shape, degrees, 80, 20);
    assertThat(widths.figure()).isEqualTo("30.3-2A");
    assertThat(widths.edgeM() / FOOT_M).isCloseTo(12, within(1e-9));
    assertThat(widths.cornerM() / FOOT_M).isCloseTo(4, within(1e-9));
  }

  /** Least dimension above 300 ft and at most 7 degrees: a at most 0.8 h [2nd]. */
  @Test
  void aWideLowMonoslopeIsLimitedToEightTenthsOfItsHeight() {
    assertThat(widths(Shape.MONOSLOPE, 5, 400, 15).edgeM() / FOOT_M).isCloseTo(12, within(1e-9));
    assertThat(widths(Shape.MONOSLOPE, 8, 400, 15).edgeM() / FOOT_M).isCloseTo(16, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "GABLE, 7.1, 30.3-2B",
    "GABLE, 20, 30.3-2B",
    "GABLE, 20.1, 30.3-2C",
    "GABLE, 45, 30.3-2D",
    "HIP, 18, 30.3-2E",
    "MONOSLOPE, 10, 30.3-5A",
    "MONOSLOPE, 30, 30.3-5B"
  })
  void theFigureFollowsShapeAndSlope(Shape shape, double degrees, String figure) {
    assertThat(widths(shape, degrees, 80, 20).figure()).isEqualTo(figure);
  }

  /** Hip roofs: 7-16 has two figures up to 20 degrees, so that 7-22 is a letter behind [2nd]. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, 20, 30.3-2E",
    "ASCE_7_16, 22.6, 30.3-2G",
    "ASCE_7_16, 33.7, 30.3-2H",
    "ASCE_7_22, 20, 30.3-2E",
    "ASCE_7_22, 22.6, 30.3-2F",
    "ASCE_7_22, 33.7, 30.3-2G"
  })
  void theFigureOfAHipRoofIsThatOfTheEdition(AsceEdition edition, double degrees, String figure) {
    Roof roof = roof(Shape.HIP, degrees, 80, 20);
    assertThat(ZoneWidth.of(Shipped.windTables(edition), roof).result().map(Widths::figure))
        .contains(figure);
  }

  @ParameterizedTest
  @CsvSource({"GABLE, 46, 20", "MONOSLOPE, 31, 20", "FLAT, 8, 20", "GABLE, 18, 61"})
  void outsideTheFiguresThereIsNoWidth(Shape shape, double degrees, double heightFt) {
    assertThat(ZoneWidth.of(tables(), roof(shape, degrees, 80, heightFt)))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @Test
  void aHigherOrLargerBuildingNeverHasNarrowerZones() {
    for (double h = 10; h < 60; h += 5) {
      for (double b = 20; b < 300; b += 20) {
        double aM = widths(Shape.HIP, 15, b, h).edgeM();
        assertThat(widths(Shape.HIP, 15, b, h + 0.1).edgeM()).isGreaterThanOrEqualTo(aM);
        assertThat(widths(Shape.HIP, 15, b + 0.1, h).edgeM()).isGreaterThanOrEqualTo(aM);
      }
    }
  }

  private static Widths widths(Shape shape, double degrees, double leastFt, double heightFt) {
    return ZoneWidth.of(tables(), roof(shape, degrees, leastFt, heightFt)).result().orElseThrow();
  }

  private static EditionTables tables() {
    return Shipped.windTables(AsceEdition.ASCE_7_16);
  }

  private static Roof roof(Shape shape, double degrees, double leastFt, double heightFt) {
    return new Roof(shape, Math.toRadians(degrees), leastFt * FOOT_M, heightFt * FOOT_M);
  }
}
