package clampwise.calc.trail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.parser.ParseException;
import java.util.List;

/** Keys the formulas of shown work into a general library and compares the results. */
public final class Recomputed {

  private Recomputed() {}

  /** Every line with a formula gives its result, in the units of the work. */
  public static void check(Work work) {
    List<Line> computed = work.lines().stream().filter(l -> !l.formula().isEmpty()).toList();
    assertThat(computed).as("lines with a formula").isNotEmpty();
    assertThat(work.lines())
        .as("inputs without a formula")
        .noneMatch(line -> line.formula().isEmpty() && !line.inputs().isEmpty());
    computed.forEach(line -> check(line, work.measure()));
  }

  private static void check(Line line, Measure measure) {
    double printed = measure.value(line.result());
    assertThat(value(line, measure))
        .as(line.result().symbol() + " = " + line.formula())
        .isCloseTo(printed, within(1e-9 + 1e-7 * Math.abs(printed)));
  }

  private static double value(Line line, Measure measure) {
    String formula = line.formula().replaceAll("\\bln\\(", "LOG(").replaceAll("\\bexp\\(", "E^(");
    Expression expression = new Expression(formula, ExpressionConfiguration.defaultConfiguration());
    for (Term term : line.inputs()) {
      expression.with(term.symbol(), measure.value(term));
    }
    try {
      return expression.evaluate().getNumberValue().doubleValue();
    } catch (EvaluationException | ParseException e) {
      throw new AssertionError(line.formula() + ": " + e.getMessage(), e);
    }
  }
}
