package clampwise.calc.trail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.units.Dimension;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values between the rows of a table, and formulas with constants of other units. */
class BetweenTest {

  private static final List<Table.Row> ROWS = List.of(row(10, 1), row(20, 3), row(40, 4));

  @ParameterizedTest
  @CsvSource({"5, 1", "10, 1", "15, 2", "20, 3", "25, 3.25", "40, 4", "50, 4"})
  void betweenRowsAStraightLineOutsideThemTheLastValue(double x, double value) {
    assertThat(Between.in(ROWS, "x", "y", x).value(x)).isCloseTo(value, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"5, true", "10, true", "15, false", "20, true", "25, false", "40, true", "50, true"})
  void aValueOfTheTableIsReadFromItsRowAlone(double x, boolean alone) {
    Work work = new Work(Measure.METRIC);
    Between.in(ROWS, "x", "y", x)
        .write(work, Term.length("x", "place", x), "y", "value", Source.STATICS);
    assertThat(work.lines()).singleElement().satisfies(line -> isRead(line, alone));
  }

  private static void isRead(Line line, boolean alone) {
    assertThat(line.formula().isEmpty()).isEqualTo(alone);
    assertThat(line.inputs()).hasSize(alone ? 0 : 5);
  }

  /** A foot is 0.3048 m: the shorter number is the one to key in. */
  @Test
  void aSymbolInAnotherUnitCarriesTheShorterFactor() {
    Formulas metric = Formulas.of(new Work(Measure.METRIC));
    assertThat(metric.in(Unit.FOOT, "h")).isEqualTo("(h/0.3048)");
    assertThat(metric.out(Unit.FOOT, "2*h")).isEqualTo("(2*h)*0.3048");
    assertThat(metric.in(Unit.MILLIMETRE, "h")).isEqualTo("(h*1000)");
    assertThat(metric.out(Unit.METRE, "2*h")).isEqualTo("2*h");
    assertThat(Formulas.of(new Work(Measure.IMPERIAL)).in(Unit.FOOT, "h")).isEqualTo("h");
    assertThat(Formulas.of(new Work(Measure.IMPERIAL)).in(Unit.INCH, "h")).isEqualTo("(h*12)");
  }

  @Test
  void aWireIsMeasuredByItsArea() {
    assertThat(Measure.METRIC.of(Dimension.WIRE_SIZE)).isEqualTo(Units.SQUARE_MILLIMETRE);
    assertThat(Measure.IMPERIAL.of(Dimension.WIRE_SIZE)).isEqualTo(Units.KCMIL);
  }

  private static Table.Row row(double x, double y) {
    return new Table.Row(Map.of(), Map.of("x", x, "y", y));
  }
}
