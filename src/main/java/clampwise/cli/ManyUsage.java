package clampwise.cli;

import clampwise.batch.Share;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The options of {@code review} that concern many jobs, as they are written and read. */
record ManyUsage(ParseResult parsed) {

  private static final int MOST_DIGITS = 4;

  /** The options. */
  static List<OptionSpec> options() {
    return List.of(
        CommandTree.value(
            "--changed", "REV", "Only jobs for which something changed since a git revision."),
        CommandTree.value(
            "--cores", "N", "How many jobs to review at once; all cores unless given."),
        CommandTree.value(
            DeskUsage.INPUT_NAME, "FILE", "Review - as if it stood in this file, saved or not."),
        CommandTree.value("--part", "K/N", "Only part K of N, for several machines."),
        CommandTree.value("--to", "FILE", "Write the results to a file for clampwise merge."),
        CommandTree.flag("--no-cache", "Neither use nor keep results from run to run."));
  }

  /** What was asked for; empty when nothing was. */
  Optional<ManyOptions> many() {
    ManyOptions asked =
        new ManyOptions(
            value("--cores").map(ManyUsage::cores),
            value("--changed"),
            !parsed.hasMatchedOption("--no-cache"),
            value("--part").map(ManyUsage::share).orElse(Share.ALL),
            value("--to"));
    if (asked.to().isPresent()) {
      checkNothingElseIsWritten();
    }
    return asked.equals(ManyOptions.NONE) ? Optional.empty() : Optional.of(asked);
  }

  private Optional<String> value(String name) {
    OptionSpec given = parsed.matchedOption(name);
    return Optional.ofNullable(given).map(option -> option.stringValues().get(0));
  }

  /** A file of results is the only output of a run that writes one. */
  private void checkNothingElseIsWritten() {
    for (String option : List.of("--report", "--calc-sheet", "--format", "--lines", "--quiet")) {
      if (parsed.hasMatchedOption(option)) {
        throw new UsageException(
            "--to writes results only; give " + option + " to clampwise merge");
      }
    }
  }

  private static Share share(String written) {
    int slash = written.indexOf('/');
    Optional<Integer> part = number(written.substring(0, Math.max(0, slash)));
    Optional<Integer> parts = number(written.substring(slash + 1));
    if (part.isPresent() && parts.isPresent() && part.get() > 0 && part.get() <= parts.get()) {
      return new Share(part.get(), parts.get());
    }
    throw new UsageException("--part takes one part of several, such as 2/4, not " + written);
  }

  private static int cores(String written) {
    return number(written)
        .filter(cores -> cores > 0)
        .orElseThrow(() -> new UsageException("--cores takes a number from 1 on, not " + written));
  }

  private static Optional<Integer> number(String written) {
    boolean digits = written.chars().allMatch(sign -> sign >= '0' && sign <= '9');
    return digits && !written.isEmpty() && written.length() <= MOST_DIGITS
        ? Optional.of(Integer.parseInt(written))
        : Optional.empty();
  }
}
