package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A published or worked case and the command that reproduces it.
 *
 * @param source where it stands, with its tag
 * @param command name and inputs, as typed after {@code clampwise calc}
 * @param symbol the number that is compared
 * @param printed its value as printed there, with its unit
 */
record ReferenceCase(String source, String command, String symbol, String printed) {

  /** A case from one line: source | command | symbol | printed value. */
  static ReferenceCase of(String line) {
    String[] parts = line.split("\\|");
    if (parts.length != 4) {
      throw new AssertionError("a reference case has four parts: " + line);
    }
    return new ReferenceCase(
        parts[0].strip(), parts[1].strip(), parts[2].strip(), parts[3].strip());
  }

  static List<ReferenceCase> all() {
    return Stream.of(
            WindCases.ALL,
            SnowCases.ALL,
            EurocodeCases.ALL,
            LoadCases.ALL,
            StaticsCases.ALL,
            ElectricalCases.ALL,
            AccuracyCases.ALL,
            TakeoffCases.ALL,
            DurabilityCases.ALL)
        .flatMap(List::stream)
        .map(ReferenceCase::of)
        .toList();
  }

  String calculation() {
    return command.split(" ")[0];
  }

  /** The command as a shell wants it: words with a mark that shells read stand in quotes. */
  String typed() {
    return Stream.of(command.split(" "))
        .map(word -> word.indexOf('\'') < 0 ? word : '"' + word + '"')
        .collect(Collectors.joining(" "));
  }

  /** What the program gives, in the unit of the printed value. */
  double recomputed() {
    Term term = term();
    return unit(term.dimension()).fromSi(term.si());
  }

  private Term term() {
    List<String> words = List.of(command.split(" "));
    Calculation calculation = Calculations.find(words.get(0)).orElseThrow();
    Reading reading = GivenReader.read(calculation, words.subList(1, words.size()));
    Given given =
        reading.given().orElseThrow(() -> new AssertionError(command + ": " + reading.problems()));
    Work work = new Work(reading.measure());
    Outcome<List<Term>> outcome = calculation.body().run(given, work);
    if (outcome instanceof Outcome.NotApplicable<List<Term>> none) {
      throw new AssertionError(command + ": " + none.reason());
    }
    List<Term> lines = work.lines().stream().map(line -> line.result()).toList();
    return Stream.concat(lines.stream(), outcome.result().orElseThrow().stream())
        .filter(term -> term.symbol().equals(symbol))
        .reduce((first, last) -> last)
        .orElseThrow(() -> new AssertionError(command + " gives no " + symbol));
  }

  private Unit unit(Dimension dimension) {
    Parsed parsed = QuantityText.parse(printed, dimension, Optional.empty());
    if (parsed instanceof Parsed.Value value) {
      return value.unit();
    }
    throw new AssertionError(printed + " is no value of " + symbol + " (" + dimension + ")");
  }

  /** The printed number, without its unit. */
  double number() {
    return Double.parseDouble(figure());
  }

  /** Half of the last printed digit. */
  double tolerance() {
    int point = figure().indexOf('.');
    int decimals = point < 0 ? 0 : figure().length() - point - 1;
    return 0.5000001 * Math.pow(10, -decimals);
  }

  private String figure() {
    return printed.split(" ")[0];
  }
}
