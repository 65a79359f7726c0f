package clampwise.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Reads what a desk is set up with. */
final class DeskUsage {

  private final ParseResult parsed;

  DeskUsage(ParseResult parsed) {
    this.parsed = parsed;
  }

  /** What standard input is called, for commands that read it. */
  static final String INPUT_NAME = "--stdin-name";

  static List<OptionSpec> options() {
    return List.of(
        CommandTree.value("--policy", "FILE", "The policy for all jobs, not those above each."),
        CommandTree.value(
            "--on", "DAY", "Day on which the review counts as made; today unless given."));
  }

  DeskOptions desk() {
    return new DeskOptions(
        policy(), first("--on").map(day -> day("--on", day)), first(INPUT_NAME).map(this::input));
  }

  /** Where standard input would stand. */
  private Path input(String name) {
    boolean read = false;
    for (ArgSpec word : parsed.matchedArgs()) {
      read |= word.isPositional() && word.stringValues().contains("-");
    }
    if (!read) {
      throw new UsageException(INPUT_NAME + " names standard input; write - among the jobs");
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new UsageException(name + " is not a file name here");
    }
  }

  private Optional<Path> policy() {
    return first("--policy").map(name -> existing("--policy", name));
  }

  /** A file that has to be there. */
  private static Path existing(String option, String name) {
    try {
      Path file = Path.of(name);
      if (Files.isRegularFile(file)) {
        return file;
      }
    } catch (InvalidPathException e) {
      throw new UsageException(name + " is not a file name here");
    }
    throw new UsageException(option + " takes a file; there is none named " + name);
  }

  /** A day as it is written everywhere. */
  static LocalDate day(String option, String written) {
    try {
      return LocalDate.parse(written);
    } catch (DateTimeParseException e) {
      throw new UsageException(
          option + " takes a day such as 2026-04-14 (year-month-day), not " + written);
    }
  }

  private Optional<String> first(String name) {
    OptionSpec given = parsed.matchedOption(name);
    return Optional.ofNullable(given).map(option -> option.stringValues().get(0));
  }
}
