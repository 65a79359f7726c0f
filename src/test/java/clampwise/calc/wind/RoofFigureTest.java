package clampwise.calc.wind;

import static clampwise.calc.wind.Cases.CODE_16;
import static clampwise.calc.wind.Cases.CODE_22;
import static clampwise.calc.wind.Cases.FOOT_M;
import static clampwise.calc.wind.Cases.building;
import static clampwise.calc.wind.Cases.of;
import static clampwise.calc.wind.Cases.patch;
import static clampwise.calc.wind.Cases.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.ZoneWidth;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Shape;
import clampwise.calc.trail.Table;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RoofFigureTest {

  /** The figure that draws the zones and the figure that gives the coefficients are one. */
  @ParameterizedTest
  @EnumSource
  void theFigureIsTheOneTheZonesAreDrawnBy(Shape shape) {
    for (double degrees = 0; degrees < 50; degrees += 0.5) {
      Roof roof = new Roof(shape, Math.toRadians(degrees), 60 * FOOT_M, 30 * FOOT_M);
      Optional<String> drawn =
          ZoneWidth.of(CODE_16.tables(), roof).result().map(ZoneWidth.Widths::figure);
      assertThat(RoofFigure.of(CODE_16, roof).result()).isEqualTo(drawn);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "HIP, 20, 30.3-2E",
    "HIP, 21, 30.3-2F",
    "HIP, 28, 30.3-2G",
    "GABLE, 27, 30.3-2C",
    "GABLE, 28, 30.3-2D",
    "FLAT, 7, 30.3-2A"
  })
  void theLaterEditionHasOneFigureForLowHips(Shape shape, double degrees, String figure) {
    assertThat(of(RoofFigure.of(CODE_22, building(shape, degrees, 60, 30).roof())))
        .isEqualTo(figure);
  }

  /** The zone names the layout draws, by figure. */
  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, FLAT, 0, 1' 1 2 3",
    "ASCE_7_16, GABLE, 15, 1 2e 2r 2n 3e 3r",
    "ASCE_7_16, GABLE, 25, 1 2e 2r 2n 3e 3r",
    "ASCE_7_16, GABLE, 40, 1 2e 2r 2n 3e 3r",
    "ASCE_7_16, HIP, 15, 1 2e 2r 3",
    "ASCE_7_16, HIP, 25, 1 2e 2r 3",
    "ASCE_7_16, MONOSLOPE, 5, 1 2 2' 3 3'",
    "ASCE_7_16, MONOSLOPE, 20, 1 2 3",
    "ASCE_7_22, FLAT, 0, 1' 1 2 3",
    "ASCE_7_22, GABLE, 15, 1 2 3",
    "ASCE_7_22, GABLE, 25, 1 2 3",
    "ASCE_7_22, GABLE, 40, 1 2 3",
    "ASCE_7_22, HIP, 15, 1 2 3",
    "ASCE_7_22, HIP, 25, 1 2 3",
    "ASCE_7_22, HIP, 40, 1 2 3",
    "ASCE_7_22, MONOSLOPE, 5, 1 2 2' 3 3'"
  })
  void everyZoneThatIsDrawnHasACoefficient(
      AsceEdition edition, Shape shape, double degrees, String zones) {
    WindBuilding building = building(shape, degrees, 60, 36);
    for (String zone : zones.split(" ")) {
      Outcome<Coefficients> found =
          ExternalCoefficient.of(Cases.code(edition), building, patch(zone, 20), work());
      assertThat(found).as(zone).isInstanceOf(Outcome.Result.class);
    }
  }

  /** Every line of every figure falls towards 0 with the area and is constant outside its ends. */
  @ParameterizedTest
  @CsvSource({
    "7-16-30.3-2A",
    "7-16-30.3-2B",
    "7-16-30.3-2C",
    "7-16-30.3-2D",
    "7-16-30.3-2E",
    "7-16-30.3-2F",
    "7-16-30.3-2G",
    "7-16-30.3-5A",
    "7-16-30.3-5B",
    "7-16-30.5-1",
    "7-22-30.3-2A",
    "7-22-30.3-2B",
    "7-22-30.3-2C",
    "7-22-30.3-2D",
    "7-22-30.3-2E",
    "7-22-30.3-2F",
    "7-22-30.3-2F-end-100",
    "7-22-30.3-2G",
    "7-22-30.3-5A",
    "7-22-30.3-5B",
    "7-22-30.4-1"
  })
  void aLineFallsBetweenItsEnds(String figure) {
    List<Table.Row> rows = CODE_16.table("gcp-" + figure).rows();
    assertThat(rows).hasSizeGreaterThan(2);
    for (Table.Row row : rows) {
      Curve curve = Curve.of(row);
      assertThat(Math.abs(curve.last())).isLessThanOrEqualTo(Math.abs(curve.first()));
      assertThat(curve.lastAreaM2()).isGreaterThan(curve.firstAreaM2());
      assertThat(curve.at(curve.firstAreaM2() / 2)).isEqualTo(curve.first());
      assertThat(curve.at(curve.lastAreaM2() * 2)).isEqualTo(curve.last());
      double middle = Math.sqrt(curve.firstAreaM2() * curve.lastAreaM2());
      assertThat(curve.at(middle)).isCloseTo((curve.first() + curve.last()) / 2, within(1e-12));
    }
  }
}
