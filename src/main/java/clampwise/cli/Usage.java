package clampwise.cli;

import clampwise.calc.trail.Measure;
import clampwise.cli.ReviewOptions.Colouring;
import clampwise.cli.ReviewOptions.Format;
import clampwise.finding.Threshold;
import clampwise.source.Nearest;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Parsed arguments as the commands take them. */
final class Usage {

  private final ParseResult parsed;

  Usage(ParseResult parsed) {
    this.parsed = parsed;
  }

  /** How a review was asked for. */
  ReviewOptions review() {
    boolean quiet = flag("--quiet");
    return new ReviewOptions(
        words(),
        format(quiet),
        quiet,
        threshold(),
        choice("--color", Colouring.AUTO, Colouring.values()),
        sheet(),
        ReportFiles.of(values("--report"), words()),
        new ManyUsage(parsed).many());
  }

  /** Whether the command says itself how a review is printed. */
  boolean saysHowToPrint() {
    return flag("--format") || flag("--lines") || flag("--quiet");
  }

  private Optional<Threshold> threshold() {
    return parsed.hasMatchedOption("--fail-on")
        ? Optional.of(choice("--fail-on", Threshold.ERROR, Threshold.values()))
        : Optional.empty();
  }

  /** What the desk is set up with. */
  DeskOptions desk() {
    return new DeskUsage(parsed).desk();
  }

  private List<String> values(String option) {
    OptionSpec given = parsed.matchedOption(option);
    return given == null ? List.of() : given.stringValues();
  }

  /** Name of the calculation sheet; its ending decides its format. */
  private Optional<String> sheet() {
    OptionSpec given = parsed.matchedOption("--calc-sheet");
    if (given == null) {
      return Optional.empty();
    }
    String file = given.stringValues().get(0);
    if (!file.endsWith(".md") && !file.endsWith(".json")) {
      throw new UsageException("--calc-sheet takes a file that ends in .md or .json, not " + file);
    }
    return Optional.of(file);
  }

  /** How a calculation was asked for. */
  CalcOptions calc() {
    Format format = choice("--format", Format.TEXT, new Format[] {Format.TEXT, Format.JSON});
    Optional<Measure> measure =
        parsed.hasMatchedOption("--units")
            ? Optional.of(choice("--units", Measure.METRIC, Measure.values()))
            : Optional.empty();
    return new CalcOptions(words(), measure, format == Format.JSON);
  }

  /** How a take-off was asked for. */
  TakeoffOptions takeoff() {
    TakeoffOptions.Format format =
        choice("--format", TakeoffOptions.Format.TEXT, TakeoffOptions.Format.values());
    return new TakeoffOptions(words(), format, spares());
  }

  /** A share of spares, from none to as many as there are parts. */
  private Optional<Double> spares() {
    OptionSpec given = parsed.matchedOption("--spares");
    if (given == null) {
      return Optional.empty();
    }
    String written = given.stringValues().get(0);
    Parsed read = QuantityText.parse(written, Dimension.NUMBER, Optional.empty());
    if (read instanceof Parsed.Value value && value.si() >= 0 && value.si() <= 1) {
      return Optional.of(value.si());
    }
    throw new UsageException("--spares takes a share from 0 % to 100 %, not " + written);
  }

  /** Which schema was asked for. */
  SchemaCommand.Of schema() {
    List<SchemaCommand.Of> asked = new ArrayList<>();
    for (SchemaCommand.Of one : SchemaCommand.Of.values()) {
      if (one != SchemaCommand.Of.JOB && flag(one.option())) {
        asked.add(one);
      }
    }
    if (asked.size() > 1) {
      throw new UsageException(
          "one schema at a time: " + asked.get(0).option() + " or " + asked.get(1).option());
    }
    return asked.isEmpty() ? SchemaCommand.Of.JOB : asked.get(0);
  }

  /** What was given with an option that takes one value. */
  Optional<String> value(String option) {
    return values(option).stream().findFirst();
  }

  boolean flag(String name) {
    return parsed.hasMatchedOption(name);
  }

  /** The words that are no options. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    // Words with options between them are listed once for each stretch, each time with all words.
    new LinkedHashSet<>(parsed.matchedPositionals())
        .forEach(word -> words.addAll(word.stringValues()));
    return words;
  }

  private Format format(boolean quiet) {
    Format format = choice("--format", Format.TEXT, new Format[] {Format.TEXT, Format.JSON});
    if (format != Format.JSON) {
      return flag("--lines") ? Format.LINES : Format.TEXT;
    }
    if (quiet || flag("--lines")) {
      throw new UsageException(
          "--format json is always complete; leave out " + (quiet ? "--quiet" : "--lines"));
    }
    return format;
  }

  private <E extends Enum<E>> E choice(String option, E unless, E[] known) {
    OptionSpec given = parsed.matchedOption(option);
    return given == null ? unless : choice(option, given.stringValues().get(0), known);
  }

  /** The value that a word means. */
  static <E extends Enum<E>> E choice(String option, String written, E[] known) {
    List<String> words = new ArrayList<>();
    for (E one : known) {
      words.add(word(one));
      if (word(one).equals(written)) {
        return one;
      }
    }
    Optional<String> nearest = Nearest.to(written, words);
    throw new UsageException(
        option + " takes " + String.join(", ", words) + ", not " + written + Hint.of(nearest));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
