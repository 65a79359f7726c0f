package clampwise.calc.wind;

import static clampwise.calc.ZoneWidth.Shape.FLAT;
import static clampwise.calc.ZoneWidth.Shape.GABLE;
import static clampwise.calc.wind.Cases.CODE_16;
import static clampwise.calc.wind.Cases.CODE_22;
import static clampwise.calc.wind.Cases.FOOT_M;
import static clampwise.calc.wind.Cases.building;
import static clampwise.calc.wind.Cases.of;
import static clampwise.calc.wind.Cases.patch;
import static clampwise.calc.wind.Cases.setup;
import static clampwise.calc.wind.Cases.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.ExposureMethod;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands exactly at a border of the wind provisions, and what lies outside them. */
class WindBordersTest {

  /** Figure 30.3-2A needs no plan size; the others do. */
  @Test
  void withoutAPlanSizeOnlyLowSlopesHaveWidths() {
    Work work = work();
    Roof low = new Roof(GABLE, 0.05, Double.NaN, 6);
    assertThat(of(ZoneDimension.of(CODE_16, low, work)).edgeM()).isCloseTo(3.6, within(1e-12));
    assertThat(symbols(work)).containsExactly("w_2", "w_3");
    assertThat(ZoneDimension.of(CODE_16, new Roof(GABLE, 0.3, Double.NaN, 6), work()))
        .isEqualTo(new Outcome.NotApplicable<>("the plan size of the building is not given"));
  }

  @ParameterizedTest
  @CsvSource({"6, 0", "0, 3", "-1, 3", "NaN, 3"})
  void anEffectiveAreaHasASpanAndAWidth(double span, double width) {
    assertThat(EffectiveArea.of(CODE_16, span, width, work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "NaN"})
  void noAreaHasNoCoefficient(double area) {
    assertThat(ExternalCoefficient.of(CODE_16, building(FLAT, 0, 60, 20), patch("1", area), work()))
        .isInstanceOf(Outcome.NotApplicable.class);
    assertThat(PanelEqualisation.of(CODE_16, patch("1", area), work()))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({"-2, MET", "2, MET", "-2.1, NOT_MET"})
  void aTiltCountsEitherWay(double degrees, PanelCondition.Answer answer) {
    assertThat(
            PanelConditions.of(CODE_16, Enclosure.ENCLOSED, setup(6, degrees, 0.5, 36), work())
                .get(1)
                .answer())
        .isEqualTo(answer);
  }

  /** 26.9: as given, else by the elevation. */
  @Test
  void aGivenGroundElevationFactorStands() {
    Work work = work();
    WindSite given = new WindSite(50, Exposure.C, 1, Optional.of(0.9), Optional.of(2000.0));
    assertThat(GroundElevation.of(CODE_16, given, work)).isEqualTo(0.9);
    assertThat(notes(work)).containsExactly("as given");
  }

  /** 26.10: below 15 ft as at 15 ft; the floor of 0.70 is for heights below 30 ft. */
  @Test
  void theGroundAndTheEndsOfTheFloorBelongToTheProfile() {
    assertThat(of(ExposureCoefficient.of(CODE_16, Exposure.B, 0, work()))).isEqualTo(0.57);
    Work at15 = work();
    of(ExposureCoefficient.of(CODE_16, Exposure.B, 15 * FOOT_M, at15));
    assertThat(at15.lines()).hasSize(1);
    WindChoices floored = Cases.choices().with(ExposureMethod.FORMULA).withExposureFloor(true);
    WindCode code = CODE_22.with(floored);
    assertThat(of(ExposureCoefficient.of(code, Exposure.B, 30 * FOOT_M, work())))
        .isCloseTo(0.6892, within(0.00005));
    assertThat(of(ExposureCoefficient.of(code, Exposure.B, 29.9 * FOOT_M, work()))).isEqualTo(0.70);
  }

  /** Figures 30.3-2 hold for h up to 60 ft. */
  @Test
  void aBuildingOf60FeetIsNotTall() {
    assertThat(of(RoofFigure.of(CODE_16, building(FLAT, 0, 80, 60).roof()))).isEqualTo("30.3-2A");
    assertThat(of(RoofFigure.of(CODE_16, building(FLAT, 0, 80, 60.1).roof()))).isEqualTo("30.5-1");
  }

  /** Note 5 stands on figure 30.3-2A alone. */
  @Test
  void aParapetLendsNothingToASlopedRoof() {
    WindBuilding plain = building(GABLE, 15, 60, 20);
    WindBuilding high = new WindBuilding(plain.roof(), Enclosure.ENCLOSED, 4 * FOOT_M);
    assertThat(of(ExternalCoefficient.of(CODE_22, high, patch("2", 32), work())))
        .isEqualTo(of(ExternalCoefficient.of(CODE_22, plain, patch("2", 32), work())));
  }

  private static List<String> notes(Work work) {
    return work.lines().stream().map(Line::note).toList();
  }

  private static List<String> symbols(Work work) {
    return work.lines().stream().map(line -> line.result().symbol()).toList();
  }
}
