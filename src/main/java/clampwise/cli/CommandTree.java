package clampwise.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The commands and their options, built without annotations because reading those costs a quarter
 * of the start-up.
 */
final class CommandTree {

  static final String PROGRAM = "clampwise";

  private CommandTree() {}

  /** The whole tree, ready to parse. */
  static CommandLine create() {
    CommandLine line = new CommandLine(root());
    line.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
    line.setUsageHelpAutoWidth(false);
    line.setExpandAtFiles(false);
    return line;
  }

  private static CommandSpec root() {
    CommandSpec root = command(PROGRAM, HelpTexts.ROOT);
    root.addOption(
        OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .description("Print the version.")
            .build());
    root.addSubcommand("review", review());
    root.addSubcommand("merge", merge());
    root.addSubcommand("accept", GateUsage.accept(command("accept", HelpTexts.ACCEPT)));
    root.addSubcommand("record", GateUsage.record(command("record", HelpTexts.RECORD)));
    root.addSubcommand("compare", GateUsage.compare(command("compare", HelpTexts.COMPARE)));
    root.addSubcommand("policy", GateUsage.policy(command("policy", HelpTexts.POLICY)));
    root.addSubcommand("takeoff", takeoff());
    root.addSubcommand("explain", explain());
    root.addSubcommand("rules", rules());
    root.addSubcommand("calc", calc());
    root.addSubcommand("start", start());
    root.addSubcommand("schema", schema());
    root.addSubcommand("completion", completion());
    return root;
  }

  private static CommandSpec review() {
    CommandSpec review =
        printing(command("review", HelpTexts.REVIEW))
            .addOption(
                choice(
                    "--fail-on",
                    "SEVERITY",
                    "error, warning, note or never; error unless given.",
                    "error",
                    "warning",
                    "note",
                    "never"))
            .addOption(
                value(
                    "--calc-sheet",
                    "FILE",
                    "Write all calculations to a file that ends in .md or .json."));
    DeskUsage.options().forEach(review::addOption);
    ManyUsage.options().forEach(review::addOption);
    return review.addPositional(
        words("JOB", "1..*", "Job files, folders or patterns; - reads one from standard input."));
  }

  private static CommandSpec merge() {
    return printing(command("merge", HelpTexts.MERGE))
        .addPositional(words("FILE", "1..*", "All parts that clampwise review --part wrote."));
  }

  /** The options that say how reviews are printed and written. */
  private static CommandSpec printing(CommandSpec command) {
    return command
        .addOption(choice("--format", "FORMAT", "text or json; text unless given.", "text", "json"))
        .addOption(flag("--lines", "One line each: file:line:column: severity: message [rule]."))
        .addOption(flag("-q", "--quiet", "Only what could not be read or reaches the threshold."))
        .addOption(
            choice(
                "--color",
                "WHEN",
                "auto, always or never; auto unless given.",
                "auto",
                "always",
                "never"))
        .addOption(
            OptionSpec.builder("--report")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .paramLabel("FILE")
                .description("Write a report; its ending says what. May be given again.")
                .build())
        .addOption(ownRules())
        .addOption(flag(OwnRulesChoice.NONE, "No own rules, whatever else names a folder."));
  }

  private static CommandSpec takeoff() {
    return command("takeoff", HelpTexts.TAKEOFF)
        .addOption(
            choice(
                "--format",
                "FORMAT",
                "text, csv or json; text unless given.",
                "text",
                "csv",
                "json"))
        .addOption(
            OptionSpec.builder("--spares")
                .type(String.class)
                .arity("1")
                .paramLabel("SHARE")
                .description("Share of spares, such as 0.03; that of the job unless given.")
                .build())
        .addPositional(
            words("JOB", "1..*", "Job files to take off; - reads one from standard input."));
  }

  private static CommandSpec explain() {
    return command("explain", HelpTexts.EXPLAIN)
        .addOption(ownRules())
        .addOption(flag(OwnRulesChoice.NONE, "No own rules, whatever else names a folder."))
        .addPositional(words("RULE", "0..1", "Id of a rule; without one, all rules are listed."));
  }

  private static CommandSpec rules() {
    return command("rules", HelpTexts.RULES)
        .addPositional(words("WORD", "1..*", "test or list, then the folder of own rules."));
  }

  private static CommandSpec calc() {
    return command("calc", HelpTexts.CALC)
        .addOption(
            choice(
                "--units",
                "UNITS",
                "metric or imperial; those of the inputs unless given.",
                "metric",
                "imperial"))
        .addOption(choice("--format", "FORMAT", "text or json; text unless given.", "text", "json"))
        .addPositional(words("NAME", "0..1", "A calculation; without one, all are listed."))
        .addPositional(
            PositionalParamSpec.builder()
                .index("1..*")
                .arity("0..*")
                .required(false)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .paramLabel("KEY=VALUE")
                .description("Its inputs; without any, it says what it asks for.")
                .build());
  }

  private static CommandSpec start() {
    return command("start", HelpTexts.START)
        .addPositional(words("FILE", "1", "File to create; - prints the job instead."));
  }

  private static CommandSpec schema() {
    return command("schema", HelpTexts.SCHEMA)
        .addOption(flag("--review", "The schema of review --format json instead."))
        .addOption(flag("--takeoff", "The schema of takeoff --format json instead."))
        .addOption(flag("--policy", "The schema of a policy instead."))
        .addOption(flag("--accepted", "The schema of accepted deviations instead."))
        .addOption(flag("--debts", "The schema of a record of known debts instead."));
  }

  private static CommandSpec completion() {
    return command("completion", HelpTexts.COMPLETION)
        .addPositional(words("SHELL", "1", "bash, zsh or fish."));
  }

  private static CommandSpec command(String name, HelpTexts texts) {
    CommandSpec command = CommandSpec.create().name(name);
    command
        .usageMessage()
        .description(texts.description())
        .footer(texts.footer())
        .sortOptions(false)
        .synopsisSubcommandLabel("COMMAND")
        .commandListHeading("%nCommands:%n")
        .descriptionHeading("%n")
        .parameterListHeading("%n")
        .optionListHeading("%nOptions:%n")
        .footerHeading("%n");
    return command.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("Print this help.").build());
  }

  static OptionSpec ownRules() {
    return OptionSpec.builder(OwnRulesChoice.OPTION)
        .type(String.class)
        .arity("1")
        .paramLabel("FOLDER")
        .description("Rules of your own too; they are code, so name only what you trust.")
        .build();
  }

  static OptionSpec flag(String name, String description) {
    return OptionSpec.builder(name).type(boolean.class).description(description).build();
  }

  private static OptionSpec flag(String letter, String name, String description) {
    return OptionSpec.builder(letter, name).type(boolean.class).description(description).build();
  }

  static OptionSpec choice(String name, String label, String description, String... values) {
    return OptionSpec.builder(name)
        .completionCandidates(List.of(values))
        .type(String.class)
        .arity("1")
        .paramLabel(label)
        .description(description)
        .build();
  }

  static OptionSpec value(String name, String label, String description) {
    return OptionSpec.builder(name)
        .type(String.class)
        .arity("1")
        .paramLabel(label)
        .description(description)
        .build();
  }

  static PositionalParamSpec words(String label, String arity, String description) {
    return PositionalParamSpec.builder()
        .index(arity.endsWith("*") ? "0..*" : "0")
        .arity(arity)
        .required(!arity.startsWith("0"))
        .hideParamSyntax(label.indexOf(' ') > 0)
        .type(List.class)
        .auxiliaryTypes(String.class)
        .paramLabel(label)
        .description(description)
        .build();
  }
}
