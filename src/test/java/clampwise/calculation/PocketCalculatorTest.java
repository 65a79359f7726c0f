package clampwise.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PocketCalculatorTest {

  @ParameterizedTest
  @CsvSource({
    "x^2 + 3 * X, 13",
    "sqrt(x * 8), 4",
    "log10(x * 50), 2",
    "ln(exp(X)), 3",
    "'min(x, -X)', -3",
    "'max(abs(-x), X)', 3",
    "x^(X / 2), 2.8284271",
    "sin(x * 15) + cos(X * 20) + tan(45), 2"
  })
  void everyOperationOfALineIsKnown(String formula, double value) {
    assertThat(new PocketCalculator(line(formula, 0)).value(Measure.METRIC))
        .isCloseTo(value, within(1e-6));
  }

  @Test
  void aDeviationOfATenThousandthIsMoreThanRounding() {
    PocketCalculator calculator = new PocketCalculator(line("1.0001 * x * X", 6));
    assertThat(Math.abs(calculator.value(Measure.METRIC) - 6))
        .isGreaterThan(calculator.rounding(Measure.METRIC));
  }

  @Test
  void aSymbolWithoutInputIsFound() {
    assertThatThrownBy(() -> new PocketCalculator(line("x * y", 0)))
        .hasMessageContaining("no input y");
  }

  @Test
  void anInputThatIsNotUsedIsFound() {
    assertThat(new PocketCalculator(line("2 * x", 0)).unused()).containsExactly("X");
  }

  private static Line line(String formula, double value) {
    return new Line(
        Term.number("r", "result", value),
        formula,
        List.of(Term.number("x", "small", 2), Term.number("X", "large", 3)),
        Source.STATICS,
        "");
  }
}
