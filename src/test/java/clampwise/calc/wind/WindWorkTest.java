package clampwise.calc.wind;

import static clampwise.calc.ZoneWidth.Shape.FLAT;
import static clampwise.calc.ZoneWidth.Shape.GABLE;
import static clampwise.calc.ZoneWidth.Shape.HIP;
import static clampwise.calc.wind.Cases.CODE_16;
import static clampwise.calc.wind.Cases.CODE_22;
import static clampwise.calc.wind.Cases.FOOT_M;
import static clampwise.calc.wind.Cases.INCH_M;
import static clampwise.calc.wind.Cases.building;
import static clampwise.calc.wind.Cases.good;
import static clampwise.calc.wind.Cases.of;
import static clampwise.calc.wind.Cases.patch;
import static clampwise.calc.wind.Cases.setup;
import static clampwise.calc.wind.Cases.site;
import static clampwise.calc.wind.Cases.work;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.calc.AsceEdition;
import clampwise.calc.ZoneWidth.Shape;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.PanelPressure.Panel;
import clampwise.calc.wind.WindChoices.Equalisation;
import clampwise.calc.wind.WindChoices.ExposedReading;
import clampwise.calc.wind.WindChoices.ExposureMethod;
import clampwise.calc.wind.WindChoices.HipCurve;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The written lines of wind, and what their notes say of choices and conditions. */
class WindWorkTest {

  private static final double FAR = Double.POSITIVE_INFINITY;

  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, METRIC, TABLE, 18", "ASCE_7_16, IMPERIAL, FORMULA, 3",
    "ASCE_7_22, METRIC, SEVERE, 33", "ASCE_7_22, IMPERIAL, TABLE, 20"
  })
  void everyLineOfTheVelocityPressureIsWhatItsFormulaGives(
      AsceEdition edition, Measure measure, ExposureMethod method, double heightFt) {
    WindChoices choices = Cases.choices().with(method).withExposureFloor(true);
    WindSite hill = new WindSite(50, Exposure.B, 1.2, Optional.empty(), Optional.of(1000 * FOOT_M));
    Work work = new Work(measure);
    of(VelocityPressure.of(Cases.code(edition).with(choices), hill, heightFt * FOOT_M, work));
    Recomputed.check(work);
  }

  @ParameterizedTest
  @CsvSource({
    "ASCE_7_16, METRIC, FLAT, 0, 60, 1, 30", "ASCE_7_22, IMPERIAL, FLAT, 0, 60, 2, 5",
    "ASCE_7_16, IMPERIAL, GABLE, 15, 60, 2r, 900", "ASCE_7_16, METRIC, HIP, 15, 30, 3, 32",
    "ASCE_7_22, METRIC, HIP, 36, 60, 2, 32", "ASCE_7_22, IMPERIAL, HIP, 25, 60, 2, 32"
  })
  void everyLineOfAZonesPressureIsWhatItsFormulaGives(
      AsceEdition edition,
      Measure measure,
      Shape shape,
      double degrees,
      double leastFt,
      String zone,
      double area) {
    WindCode code = Cases.code(edition);
    Work work = new Work(measure);
    Velocity velocity = of(VelocityPressure.of(code, site(115, Exposure.C), 6, work));
    WindBuilding building = building(shape, degrees, leastFt, 20);
    of(ZonePressure.of(code, building, velocity, patch(zone, area), work));
    of(PanelPressure.of(code, building, velocity, new Panel(patch(zone, area), 1.5, good()), work));
    Recomputed.check(work);
    assertThat(symbols(work)).contains("K_d");
  }

  @ParameterizedTest
  @EnumSource
  void everyLineOfAParapetsWallIsWhatItsFormulaGives(Measure measure) {
    WindCode reduced = CODE_16.with(Cases.choices().withWallReduced(true));
    WindBuilding plain = building(FLAT, 0, 80, 45);
    WindBuilding high = new WindBuilding(plain.roof(), Enclosure.ENCLOSED, 3 * FOOT_M);
    Work work = new Work(measure);
    Coefficients found = of(ExternalCoefficient.of(reduced, high, patch("2", 50), work));
    assertThat(found.positive()).isLessThan(0.9).isGreaterThan(0.63);
    Recomputed.check(work);
    assertThat(notes(work)).anyMatch(note -> note.endsWith("hold here: taken, as chosen"));
    Work whole = new Work(measure);
    of(ExternalCoefficient.of(CODE_16, high, patch("2", 50), whole));
    assertThat(notes(whole)).anyMatch(note -> note.endsWith("hold here: not taken"));
  }

  @ParameterizedTest
  @CsvSource({
    "METRIC, FLAT, 0, 60, 20",
    "IMPERIAL, GABLE, 15, 60, 20",
    "METRIC, GABLE, 7, 310, 20",
    "METRIC, MONOSLOPE, 5, 310, 20"
  })
  void everyLineOfTheZoneWidthsIsWhatItsFormulaGives(
      Measure measure, Shape shape, double degrees, double leastFt, double heightFt) {
    Work work = new Work(measure);
    of(ZoneDimension.of(CODE_16, building(shape, degrees, leastFt, heightFt).roof(), work));
    of(EffectiveArea.of(CODE_16, 6, 1, work));
    Recomputed.check(work);
    boolean wide = leastFt > 300;
    assertThat(notes(work).contains("low and wider than 300 ft: at most 0.8 h")).isEqualTo(wide);
  }

  /** Figure 29.4-8: 0.8 up to 10, 0.4 from 100 sq ft on. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"10|constant up to 10 ft²", "32|''", "100|constant from 100 ft² on"})
  void theLineSaysWhereACurveIsLevel(double area, String note) {
    Work work = work();
    of(PanelEqualisation.of(CODE_16, patch("1", area), work));
    assertThat(notes(work)).containsExactly(note);
  }

  @Test
  void aChosenEndOfACurveIsTold() {
    Work equalised = work();
    WindCode chosen = CODE_22.with(Cases.choices().with(Equalisation.TO_0_45));
    of(PanelEqualisation.of(chosen, patch("1", 32), equalised));
    assertThat(notes(equalised))
        .containsExactly("the figure's end value is read as 0.40 or 0.45; 0.45 was chosen");
    Work hip = work();
    WindCode shorter = CODE_22.with(Cases.choices().with(HipCurve.TO_100_SQ_FT));
    of(ExternalCoefficient.of(shorter, building(HIP, 25, 60, 20), patch("2", 5), hip));
    assertThat(notes(hip))
        .contains(
            "constant up to 10 ft²; transcriptions end this line at 100 or 200 ft²; 100 was"
                + " chosen");
    Work field = work();
    of(ExternalCoefficient.of(shorter, building(HIP, 25, 60, 20), patch("1", 5), field));
    assertThat(notes(field)).noneMatch(note -> note.contains("transcriptions"));
  }

  @ParameterizedTest
  @CsvSource({"METRIC, FOUR_HEIGHTS", "IMPERIAL, TWO_HEIGHTS", "METRIC, SEVERE"})
  void everyLineOfTheEdgeFactorIsWhatItsFormulaGives(Measure measure, ExposedReading reading) {
    Work work = new Work(measure);
    WindCode code = CODE_22.with(Cases.choices().with(reading));
    ArraySize size = new ArraySize(6 * INCH_M, 5 * FOOT_M, 20 * FOOT_M);
    ExposedEdge.of(code, new PanelSide(FAR, FAR, FAR, 0), size, work);
    Recomputed.check(work);
  }

  /** h 20 ft: 0.5 h = 10 ft; h2 6 in: X = 4 ft by the earlier edition. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "30|10|0|exposed: the roof's edge is 30 ft away, further than 10 ft; no array or no panel"
            + " within 4 ft; in the strip",
        "30|10|9|exposed: the roof's edge is 30 ft away, further than 10 ft; no array or no panel"
            + " within 4 ft; inside of it",
        "9|10|0|not exposed: the roof's edge is 9 ft away, not further than 10 ft; no array or no"
            + " panel within 4 ft; in the strip",
        "30|3|0|not exposed: the roof's edge is 30 ft away, further than 10 ft; array and panel"
            + " within 4 ft; in the strip",
        "Infinity|10|0|exposed: the roof's edge is far away, further than 10 ft; no array or no"
            + " panel within 4 ft; in the strip"
      })
  void theLineSaysWhyAnEdgeIsExposedOrNot(
      double roofFt, double nextFt, double insideFt, String note) {
    Work work = work();
    ArraySize size = new ArraySize(6 * INCH_M, 5 * FOOT_M, 20 * FOOT_M);
    PanelSide side =
        new PanelSide(roofFt * FOOT_M, nextFt * FOOT_M, nextFt * FOOT_M, insideFt * FOOT_M);
    ExposedEdge.of(CODE_16, side, size, work);
    assertThat(notes(work)).last().isEqualTo(note);
  }

  /** 29.4.4 [second-hand]: each condition with both numbers. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IMPERIAL|6|0.5|the height of the panels above the roof is 6 in, at most 10 in",
        "IMPERIAL|11|0.5|the height of the panels above the roof is 11 in, not at most 10 in",
        "METRIC|11|0.5|the height of the panels above the roof is 279.4 mm, not at most 254 mm",
        "IMPERIAL|6|0.125|the gap between panels is 1/8 in, not at least 1/4 in"
      })
  void aConditionSaysBothNumbers(Measure measure, double heightIn, double gapIn, String sentence) {
    Work work = new Work(measure);
    List<PanelCondition> conditions =
        PanelConditions.of(CODE_16, Enclosure.ENCLOSED, setup(heightIn, 0, gapIn, 36), work);
    assertThat(conditions).extracting(PanelCondition::sentence).contains(sentence);
    String verdict = sentence.contains("not at") ? "not met: " : "met: ";
    assertThat(notes(work)).anyMatch(note -> note.startsWith(verdict));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ENCLOSED|the building is enclosed",
        "PARTIALLY_OPEN|the building is partially open, not enclosed or partially enclosed"
      })
  void theEnclosureIsNamed(Enclosure enclosure, String sentence) {
    assertThat(PanelConditions.of(CODE_16, enclosure, good(), work()).get(0).sentence())
        .isEqualTo(sentence);
  }

  @Test
  void theLineOfACoefficientNamesItsZone() {
    Work work = work();
    Coefficients found =
        of(ExternalCoefficient.of(CODE_16, building(GABLE, 15, 60, 20), patch("2r", 32), work));
    assertThat(work.lines())
        .extracting(line -> line.result().meaning().endsWith(", zone 2r"))
        .containsExactly(false, true);
    assertThat(found.terms())
        .extracting(Term::si)
        .containsExactly(found.positive(), found.negative());
    assertThat(new Pressures(500, -900).terms())
        .extracting(Term::si)
        .containsExactly(500.0, -900.0);
  }

  private static List<String> notes(Work work) {
    return work.lines().stream().map(Line::note).toList();
  }

  private static List<String> symbols(Work work) {
    return work.lines().stream().map(line -> line.result().symbol()).toList();
  }
}
