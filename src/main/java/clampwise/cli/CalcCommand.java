package clampwise.cli;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calculation.Calculation;
import clampwise.calculation.Calculations;
import clampwise.calculation.Given;
import clampwise.calculation.GivenReader;
import clampwise.calculation.Reading;
import clampwise.report.CalculationJson;
import clampwise.report.CalculationText;
import clampwise.report.Paint;
import clampwise.report.Sheet;
import clampwise.source.Nearest;
import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;

/** {@code clampwise calc}: lists calculations, says what one asks for, runs it. */
final class CalcCommand {

  private final Console console;

  CalcCommand(Console console) {
    this.console = console;
  }

  /** Lists all for no word, explains one for its name, runs it for inputs behind. */
  int run(CalcOptions options) {
    if (options.words().isEmpty()) {
      return print(text -> text.list(Calculations.all()));
    }
    String name = options.words().get(0);
    Calculation calculation =
        Calculations.find(name).orElseThrow(() -> new UsageException(unknown(name)));
    return options.words().size() == 1
        ? print(text -> text.inputs(calculation))
        : run(calculation, options);
  }

  private static String unknown(String name) {
    List<String> names = Calculations.all().stream().map(Calculation::name).toList();
    return "there is no calculation "
        + name
        + Hint.of(Nearest.to(name, names))
        + "; clampwise calc lists all";
  }

  private int run(Calculation calculation, CalcOptions options) {
    Reading reading =
        GivenReader.read(calculation, options.words().subList(1, options.words().size()));
    if (reading.given().isEmpty()) {
      reading.problems().forEach(problem -> console.complain(calculation.name() + ": " + problem));
      console.complain("see clampwise calc " + calculation.name());
      return ExitCode.UNUSABLE;
    }
    return run(calculation, reading, reading.given().get(), options);
  }

  private int run(Calculation calculation, Reading reading, Given given, CalcOptions options) {
    Measure measure = options.measure().orElse(reading.measure());
    Work work = new Work(measure);
    Outcome<List<Term>> outcome = calculation.body().run(given, work);
    if (outcome instanceof Outcome.NotApplicable<List<Term>> none) {
      console.complain(calculation.name() + " gives no result here: " + none.reason());
      return ExitCode.UNUSABLE;
    }
    List<Term> results = outcome.result().orElseThrow();
    if (options.json()) {
      StringWriter out = new StringWriter();
      CalculationJson.write(calculation, reading, work, results, out);
      console.print(out.toString());
      return ExitCode.CLEAR;
    }
    return print(text -> text.work(calculation, reading, work, results));
  }

  private int print(Consumer<CalculationText> writing) {
    boolean colours = console.screen().coloursByItself(console.environment());
    Paint paint = colours ? new Colours() : Paint.NONE;
    Sheet sheet = new Sheet(console.screen().textWidth(), paint);
    writing.accept(new CalculationText(sheet));
    console.print(sheet.toString());
    return ExitCode.CLEAR;
  }
}
