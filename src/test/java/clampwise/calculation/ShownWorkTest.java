package clampwise.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every line of every public calculation can be followed with a pocket calculator. */
class ShownWorkTest {

  private static final String SYMBOL = "[A-Za-z][A-Za-z0-9_]*";

  static Stream<String> names() {
    return Calculations.all().stream().map(Calculation::name);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("names")
  void everyLineFollowsFromItsPrintedInputs(String name) {
    Calculation calculation = Calculations.find(name).orElseThrow();
    for (Measure measure : Measure.values()) {
      List<Run> runs = runs(calculation, measure);
      assertThat(runs).as("samples of " + name + " with a result").isNotEmpty();
      for (Run run : runs) {
        assertThat(run.lines).as(run::toString).isNotEmpty();
        run.lines.forEach(ShownWorkTest::isComplete);
        run.lines.forEach(line -> follow(line, measure, run));
        chain(run);
      }
    }
  }

  static Stream<String> written() {
    return Calculations.all().stream()
        .filter(calculation -> !new Samples(calculation).written().isEmpty())
        .map(Calculation::name);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("written")
  void everyWrittenSampleHasAResult(String name) {
    Calculation calculation = Calculations.find(name).orElseThrow();
    for (Given given : new Samples(calculation).written()) {
      assertThat(calculation.body().run(given, new Work(Measure.METRIC)))
          .as(given::toString)
          .isInstanceOf(Outcome.Result.class);
    }
  }

  private static void isComplete(Line line) {
    assertThat(line.source().document()).as(line::toString).isNotBlank();
    assertThat(line.source().obtained()).as(line::toString).isNotBlank();
    assertThat(line.result().symbol()).matches(SYMBOL);
    assertThat(line.result().si()).as(line::toString).isFinite();
  }

  /** An input that an earlier line gave has the value of that line. */
  private static void chain(Run run) {
    for (int i = 0; i < run.lines.size(); i++) {
      for (Term input : run.lines.get(i).inputs()) {
        List<Double> earlier = values(run.lines.subList(0, i), input.symbol());
        if (!earlier.isEmpty()) {
          assertThat(earlier)
              .as(() -> input.symbol() + " in " + run)
              .anyMatch(value -> Math.abs(value - input.si()) <= 1e-9 * Math.abs(value));
        }
      }
    }
  }

  private static void follow(Line line, Measure measure, Run run) {
    if (line.formula().isEmpty()) {
      assertThat(line.inputs()).as(line::toString).isEmpty();
      return;
    }
    PocketCalculator calculator = new PocketCalculator(line);
    assertThat(calculator.unused()).as(() -> "unused inputs of " + line).isEmpty();
    double result = PocketCalculator.printed(measure.value(line.result()));
    assertThat(calculator.value(measure))
        .as(() -> line + " in " + measure + " of " + run)
        .isCloseTo(result, within(calculator.rounding(measure)));
  }

  private static List<Double> values(List<Line> lines, String symbol) {
    return lines.stream()
        .map(Line::result)
        .filter(term -> term.symbol().equals(symbol))
        .map(Term::si)
        .toList();
  }

  private record Run(Given given, List<Line> lines) {}

  private static List<Run> runs(Calculation calculation, Measure measure) {
    List<Run> runs = new ArrayList<>();
    for (Given given : new Samples(calculation).all()) {
      Work work = new Work(measure);
      if (calculation.body().run(given, work) instanceof Outcome.Result) {
        runs.add(new Run(given, work.lines()));
      }
    }
    return runs;
  }
}
