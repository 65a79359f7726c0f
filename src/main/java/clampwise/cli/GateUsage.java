package clampwise.cli;

import clampwise.finding.Threshold;
import clampwise.source.SourceFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The commands of the gate: what they take, and how it was given. */
final class GateUsage {

  private final ParseResult parsed;

  GateUsage(ParseResult parsed) {
    this.parsed = parsed;
  }

  static CommandSpec accept(CommandSpec command) {
    command
        .addOption(CommandTree.value("--reason", "TEXT", "Why it is accepted; in every report."))
        .addOption(CommandTree.value("--by", "WHO", "Person or role that answers for it."))
        .addOption(CommandTree.value("--until", "DAY", "Last day on which that holds."))
        .addOption(CommandTree.value("--subject", "SUBJECT", "Which finding of a rule is meant."))
        .addOption(CommandTree.flag("--this-revision", "Only for the revision the job is at."));
    return withDesk(command)
        .addPositional(
            CommandTree.words(
                "JOB FINDING...",
                "0..*",
                "A job file, and the number of the"
                    + " finding in its review or the id of its rule."));
  }

  static CommandSpec record(CommandSpec command) {
    command.addOption(CommandTree.flag("--add", "Record new findings, too."));
    return withDesk(command)
        .addPositional(CommandTree.words("JOB", "1..*", "Job files, folders or patterns."));
  }

  static CommandSpec compare(CommandSpec command) {
    command
        .addOption(
            CommandTree.choice("--format", "FORMAT", "text or markdown.", "text", "markdown"))
        .addOption(
            CommandTree.choice(
                "--fail-on",
                "SEVERITY",
                "error, warning, note or never; error unless given.",
                "error",
                "warning",
                "note",
                "never"));
    return withDesk(command)
        .addPositional(
            CommandTree.words("OLD NEW", "0..*", "Files, folders, REV:PATH or revisions."));
  }

  static CommandSpec policy(CommandSpec command) {
    command.addOption(CommandTree.flag("--limits", "List the limits that a house may set itself."));
    return withDesk(command)
        .addPositional(CommandTree.words("JOB", "0..1", "A job file; it need not exist."));
  }

  private static CommandSpec withDesk(CommandSpec command) {
    DeskUsage.options().forEach(command::addOption);
    return command
        .addOption(CommandTree.ownRules())
        .addOption(
            CommandTree.flag(OwnRulesChoice.NONE, "No own rules, whatever else names a folder."));
  }

  AcceptOptions accept() {
    List<String> words = words();
    if (words.size() < 2) {
      throw new UsageException(
          "accept takes a job and findings, by number or by rule; see clampwise accept --help");
    }
    refuseInput("accept", words.get(0));
    return new AcceptOptions(
        words.get(0),
        words.subList(1, words.size()),
        value("--subject"),
        needed("--reason", "why it is accepted"),
        needed("--by", "the person or role that answers for it"),
        DeskUsage.day("--until", needed("--until", "the last day on which it holds")),
        parsed.hasMatchedOption("--this-revision"),
        new DeskUsage(parsed).desk());
  }

  /** Refuses standard input where something is written beside the job or about its file. */
  private static void refuseInput(String command, String word) {
    if (word.equals("-")) {
      throw new UsageException(command + " takes a job file, not standard input");
    }
  }

  List<String> recorded() {
    words().forEach(word -> refuseInput("record", word));
    return words();
  }

  private String needed(String option, String what) {
    return value(option)
        .filter(text -> !text.isBlank())
        .orElseThrow(() -> new UsageException(option + " is missing: " + what));
  }

  boolean adds() {
    return parsed.hasMatchedOption("--add");
  }

  LocalDate today() {
    return new DeskUsage(parsed).desk().today().orElseGet(LocalDate::now);
  }

  CompareOptions compare() {
    List<String> words = words();
    if (words.size() != 2) {
      throw new UsageException(
          "compare takes two sides, the older first; see clampwise compare --help");
    }
    return new CompareOptions(
        words.get(0),
        words.get(1),
        value("--fail-on").map(GateUsage::threshold),
        value("--format").map(GateUsage::isMarkdown).orElse(false));
  }

  private static Threshold threshold(String word) {
    return Usage.choice("--fail-on", word, Threshold.values());
  }

  private static boolean isMarkdown(String word) {
    return Usage.choice("--format", word, ComparedFormat.values()) == ComparedFormat.MARKDOWN;
  }

  /** How a comparison is written. */
  private enum ComparedFormat {
    TEXT,
    MARKDOWN
  }

  boolean asksForLimits() {
    return parsed.hasMatchedOption("--limits");
  }

  /** The job whose policy is asked for; in a folder, a job of the usual name. */
  String job() {
    String job = words().stream().findFirst().orElse("job.yaml");
    return Files.isDirectory(Path.of(job)) ? SourceFiles.nameOf(Path.of(job, "job.yaml")) : job;
  }

  /** The words that are no options. */
  List<String> words() {
    return new Usage(parsed).words();
  }

  private Optional<String> value(String name) {
    OptionSpec given = parsed.matchedOption(name);
    return Optional.ofNullable(given).map(option -> option.stringValues().get(0));
  }
}
