package clampwise.calc.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MovementTest {

  private static final double INCH_M = 0.0254;
  private static final Table.Row STANDOFF =
      new Table.Row(Map.of(), Map.of("decay", 0.061, "limit", 70.0));

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  private static Metal metal(String name, double millionthsPerF) {
    return new Metal(name, millionthsPerF * 1.8, Source.STATICS);
  }

  /** Steel 40 ft, 160 °F [read]; steel and aluminium 100 ft, 100 °F [computed]. */
  @ParameterizedTest
  @CsvSource({
    "steel, 6.7, 40, 160, 0.515, 0.0005",
    "steel, 6.5, 100, 100, 0.78, 0.005",
    "aluminium, 12.8, 100, 100, 1.536, 0.0005"
  })
  void metalGrowsAsInTheHandbook(
      String name, double alpha, double feet, double swing, double inches, double tolerance) {
    Work work = new Work(Measure.IMPERIAL);
    Expansion run = new Expansion(feet * 0.3048, new Swing(celsius(0), celsius(swing)));
    Term growth = run.show(metal(name, alpha), work);
    assertThat(growth.si() / INCH_M).isCloseTo(inches, within(tolerance));
    assertThat(Measure.IMPERIAL.value(work.lines().get(0).result())).isCloseTo(alpha, within(1e-9));
    Recomputed.check(work);
  }

  /** Twelve aluminium modules of 1,146 mm on steel, 60 K: 9.6 mm, 0.80 mm each [computed]. */
  @ParameterizedTest
  @EnumSource
  void twelveModulesMoveAgainstTheirRoof(Measure measure) {
    Work work = new Work(measure);
    Expansion run = new Expansion(12 * 1.146, new Swing(-10, 50));
    Metal aluminium = new Metal("aluminium", 23.6, Source.STATICS);
    Metal steel = new Metal("steel", 12.0, Source.STATICS);
    Term whole = run.show(steel, aluminium, work);
    Term each = Movement.perJoint(whole, 12, work);
    assertThat(whole.si()).isCloseTo(0.0096, within(5e-5));
    assertThat(each.si()).isCloseTo(0.00080, within(5e-6));
    assertThat(Movement.share(each, Term.length("t", "slack", 0.0008), work).si())
        .isCloseTo(0.997, within(5e-4));
    Recomputed.check(work);
  }

  /** A joint that takes all of its travel does not bind yet. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"0.0009|''", "0.0008|''", "0.0007|More than the free travel."})
  void aMovementBindsAboveItsFreeTravel(double freeM, String note) {
    Work work = new Work(Measure.METRIC);
    Movement.share(Term.length("dj", "movement", 0.0008), Term.length("t", "slack", freeM), work);
    assertThat(work.lines()).extracting(Line::note).containsExactly(note);
  }

  /** A degree Fahrenheit is 1/1.8 of a degree Celsius, and so is the expansion by it. */
  @ParameterizedTest
  @CsvSource({"METRIC, 12, °C", "IMPERIAL, 6.6667, °F"})
  void theCoefficientIsThatOfTheDegreeItNames(Measure measure, double millionths, String degree) {
    Term term = Swing.coefficient("alpha", "steel", 12, measure);
    assertThat(term.si()).isCloseTo(millionths, within(5e-5));
    assertThat(term.meaning()).endsWith("per " + degree);
  }

  /** Common practice, no source: a loop has twice the movement. */
  @ParameterizedTest
  @EnumSource
  void aLoopHasTwiceTheMovement(Measure measure) {
    Work work = new Work(measure);
    Term movement = Term.length("dL", "movement", 0.0096);
    Term factor = Term.number("c", "factor", 2);
    assertThat(Movement.slack(movement, factor, Source.STATICS, work).si()).isEqualTo(0.0192);
    Recomputed.check(work);
  }

  /** National laboratory's method: 82.574 °C and 53.716 °C give 3.49 cm [read, recomputed]. */
  @ParameterizedTest
  @EnumSource
  void theStandoffIsThatOfTheWorkedExample(Measure measure) {
    Work work = new Work(measure);
    Term gap =
        new Standoff(82.574, 53.716).show(STANDOFF, Source.STATICS, work).result().orElseThrow();
    assertThat(gap.si()).isCloseTo(0.0349, within(5e-5));
    Recomputed.check(work);
  }

  @ParameterizedTest
  @CsvSource({"80, 70", "90, 75"})
  void noGapSufficesWhereTheOpenRackIsTooHot(double insulated, double open) {
    Outcome<Term> gap =
        new Standoff(insulated, open).show(STANDOFF, Source.STATICS, new Work(Measure.METRIC));
    assertThat(gap).isInstanceOf(Outcome.NotApplicable.class);
  }

  @ParameterizedTest
  @CsvSource({"70, 50", "60, 50"})
  void anyGapDoesWhereTheInsulatedBackIsCoolEnough(double insulated, double open) {
    Work work = new Work(Measure.METRIC);
    Outcome<Term> gap = new Standoff(insulated, open).show(STANDOFF, Source.STATICS, work);
    assertThat(gap.result().orElseThrow().si()).isZero();
    assertThat(work.lines())
        .extracting(Line::note)
        .singleElement()
        .asString()
        .startsWith("Any gap does");
  }

  @ParameterizedTest
  @CsvSource({"71, 72", "72, 80", "80, 95"})
  void aHotterBackNeedsMoreGap(double cooler, double hotter) {
    List<Double> gaps =
        List.of(cooler, hotter).stream()
            .map(c -> new Standoff(c, 50).show(STANDOFF, Source.STATICS, new Work(Measure.METRIC)))
            .map(gap -> gap.result().orElseThrow().si())
            .toList();
    assertThat(gaps.get(0)).isPositive().isLessThan(gaps.get(1));
  }
}
