package clampwise.cli;

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
            "--cores", "N", "How many jobs to review at once; all cores unless given."));
  }

  /** What was asked for; empty when nothing was. */
  Optional<ManyOptions> many() {
    ManyOptions asked = new ManyOptions(value("--cores").map(ManyUsage::cores), value("--changed"));
    return asked.equals(ManyOptions.NONE) ? Optional.empty() : Optional.of(asked);
  }

  private Optional<String> value(String name) {
    OptionSpec given = parsed.matchedOption(name);
    return Optional.ofNullable(given).map(option -> option.stringValues().get(0));
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
