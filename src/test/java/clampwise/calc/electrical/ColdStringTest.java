package clampwise.calc.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;
import clampwise.units.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColdStringTest {

  private static final Table TABLE = TablesReader.read("electrical.yaml").get("voltage-factors");
  private static final Term RATE =
      new Term("b", "change by temperature", -0.0027, Dimension.TEMPERATURE_RATE);
  private static final Term VOC = ColdString.volts("V_oc", "rated voltage", 49.5);

  /** Handbook example 3.2: 49.5 V, -0.27 %/°C, -10 °C [second-hand; twelve modules computed]. */
  @ParameterizedTest
  @EnumSource
  void elevenOfThese495VoltModulesStayBelow600Volts(Measure measure) {
    Work work = new Work(measure);
    Term factor = new ColdFactor(-10).byCoefficient(RATE, work);
    Term each = ColdString.ofModule(VOC, factor, work);
    assertThat(factor.si()).isCloseTo(1.0945, within(5e-5));
    assertThat(each.si()).isCloseTo(54.18, within(5e-3));
    assertThat(ColdString.ofString(each, 11, work).si()).isCloseTo(595.96, within(5e-3));
    assertThat(ColdString.ofString(each, 12, work).si()).isCloseTo(650.13, within(5e-3));
    assertThat(ColdString.most(each, ColdString.volts("V_lim", "limit", 600), work).si())
        .isEqualTo(11);
    assertThat(ColdString.most(each, ColdString.volts("V_lim", "limit", 1000), work).si())
        .isGreaterThanOrEqualTo(12);
    Recomputed.check(work);
  }

  /** Handbook example 3.2: 40 V at -26 °C are 48.4 V [computed], 38.9 V twice 91.8 V [2nd]. */
  @ParameterizedTest
  @CsvSource({"40, -26, 1, 48.4", "38.9, -20, 2, 91.8"})
  void theTableGivesTheVoltagesOfTheHandbook(double voc, double lowest, int count, double volts) {
    double factor = factor(lowest);
    assertThat(voc * factor * count).isCloseTo(volts, within(0.05));
  }

  /** Handbook table 2.2, NEC table 690.7(A) [memory]; -20.5 °C belongs to the row of -21 °C. */
  @ParameterizedTest
  @CsvSource({
    "24, 1.02",
    "20, 1.02",
    "19.9, 1.04",
    "14, 1.06",
    "9, 1.08",
    "4, 1.10",
    "0, 1.10",
    "-1, 1.12",
    "-10, 1.14",
    "-11, 1.16",
    "-20, 1.18",
    "-20.00000000001, 1.18",
    "-20.5, 1.20",
    "-21, 1.20",
    "-30, 1.21",
    "-35, 1.23",
    "-36, 1.25",
    "-40, 1.25"
  })
  void rowsOfNecTable6907AreWholeDegrees(double lowest, double factor) {
    assertThat(factor(lowest)).isEqualTo(factor);
  }

  @ParameterizedTest
  @ValueSource(doubles = {25, -40.5, -60})
  void theTableEndsWhereItEnds(double lowest) {
    assertThat(new ColdFactor(lowest).byTable(TABLE, new Work(Measure.METRIC)))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({"60, 600, 10", "60, 599.9, 9", "60.1, 600, 9"})
  void aStringMayReachItsLimit(double each, double limit, int most) {
    assertThat(ColdString.most(each, limit)).isEqualTo(most);
  }

  /** Common practice, no source: one clip for each spacing that is begun. */
  @ParameterizedTest
  @CsvSource({"6.096, 0.6096, 10", "6.1, 0.6096, 11", "0.1, 0.6096, 1"})
  void aClipHoldsEachSpacingBegun(double length, double spacing, int clips) {
    Work work = new Work(Measure.METRIC);
    Term runs = Term.length("L", "runs", length);
    assertThat(CableClips.least(runs, Term.length("s", "spacing", spacing), work).si())
        .isEqualTo(clips);
    Recomputed.check(work);
  }

  private static double factor(double lowest) {
    return new ColdFactor(lowest)
        .byTable(TABLE, new Work(Measure.METRIC))
        .result()
        .orElseThrow()
        .si();
  }
}
