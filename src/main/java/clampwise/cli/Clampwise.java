package clampwise.cli;

import clampwise.rulebook.RulePage;
import clampwise.source.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** The program: arguments in, exit code out. */
final class Clampwise {

  private final Console console;
  private final DeskOptions.Opener desk;
  private final Supplier<List<RulePage>> rules;

  Clampwise(Console console, DeskOptions.Opener desk, Supplier<List<RulePage>> rules) {
    this.console = console;
    this.desk = desk;
    this.rules = rules;
  }

  /** Does what the arguments ask for and never throws. */
  int run(String... arguments) {
    try {
      return dispatch(arguments);
    } catch (UsageException e) {
      console.complain(String.valueOf(e.getMessage()));
      return ExitCode.UNUSABLE;
    } catch (UnwritableException e) {
      return unwritable(e);
    } catch (RuntimeException | Error e) {
      new Faults(console).report("this run", e);
      return ExitCode.FAULT;
    }
  }

  private int unwritable(UnwritableException e) {
    if (!e.readerLeft()) {
      console.complain("the output could not be written");
    }
    return ExitCode.UNUSABLE;
  }

  private int dispatch(String... arguments) {
    Optional<ReviewOptions> plain = PlainReview.of(arguments);
    return plain.isPresent() ? review(usualDesk(), plain.get()) : parsed(arguments);
  }

  private int review(Desk desk, ReviewOptions options) {
    return new ReviewCommand(console, desk).run(asTheHouseHasIt(desk, options));
  }

  private static ReviewOptions asTheHouseHasIt(Desk desk, ReviewOptions options) {
    return options.printedAs(desk.policy("job.yaml"));
  }

  private Desk usualDesk() {
    Desk shipped = desk.open(DeskOptions.PLAIN);
    return with(shipped, OwnRulesChoice.usual(console.environment()));
  }

  private Desk askedDesk(Usage usage) {
    Desk shipped = desk.open(usage.desk());
    return with(shipped, OwnRulesChoice.of(usage, console.environment()));
  }

  private Desk with(Desk shipped, Optional<OwnRulesChoice> own) {
    return own.isPresent() ? shipped.with(own.get().read(console.environment())) : shipped;
  }

  /** The pages of the rules that ship, and of own ones. */
  private Supplier<List<RulePage>> pages(Usage usage) {
    List<RulePage> all = new ArrayList<>(rules.get());
    OwnRulesChoice.of(usage, console.environment()).ifPresent(choice -> all.addAll(choice.pages()));
    return () -> all;
  }

  private int parsed(String... arguments) {
    ParseResult root = Arguments.parse(arguments);
    ParseResult command = root.hasSubcommand() ? root.subcommand() : root;
    if (command.isUsageHelpRequested() || root.isUsageHelpRequested()) {
      return help(command.commandSpec().commandLine());
    }
    if (root.isVersionHelpRequested()) {
      return version();
    }
    return root.hasSubcommand() ? run(command) : nothingAsked(root);
  }

  private int run(ParseResult command) {
    Usage usage = new Usage(command);
    return switch (command.commandSpec().name()) {
      case "review" -> review(usage);
      case "merge" -> merge(usage);
      case "takeoff" -> new TakeoffCommand(console).run(usage.takeoff());
      case "explain" -> new ExplainCommand(console, pages(usage)).run(usage.words());
      case "rules" -> new RulesCommand(console).run(usage.words());
      case "accept" -> accept(new GateUsage(command), usage);
      case "record" -> record(new GateUsage(command), usage);
      case "compare" -> compare(new GateUsage(command), usage);
      case "policy" -> policy(new GateUsage(command), usage);
      case "calc" -> new CalcCommand(console).run(usage.calc());
      case "start" -> new StartCommand(console).run(usage.words().get(0));
      case "schema" -> new SchemaCommand(console).run(usage.schema());
      default -> completion(usage.words().get(0));
    };
  }

  private int review(Usage usage) {
    Desk asked = askedDesk(usage);
    return new ReviewCommand(console, asked).run(printed(usage, asked));
  }

  private int merge(Usage usage) {
    Desk asked = askedDesk(usage);
    return new MergeCommand(console, asked).run(printed(usage, asked));
  }

  /** Printed as the house has it, where the command does not say how. */
  private static ReviewOptions printed(Usage usage, Desk asked) {
    return usage.saysHowToPrint() ? usage.review() : asTheHouseHasIt(asked, usage.review());
  }

  private int accept(GateUsage gate, Usage usage) {
    Desk asked = askedDesk(usage);
    return Math.max(ownRules(asked), new AcceptCommand(console, asked).run(gate.accept()));
  }

  private int record(GateUsage gate, Usage usage) {
    Desk asked = askedDesk(usage);
    int own = ownRules(asked);
    RecordCommand command = new RecordCommand(console, asked);
    return Math.max(own, command.run(gate.recorded(), gate.adds(), gate.today()));
  }

  private int compare(GateUsage gate, Usage usage) {
    Desk asked = askedDesk(usage);
    return Math.max(ownRules(asked), new CompareCommand(console, asked, gate.compare()).run());
  }

  private int ownRules(Desk asked) {
    return new ReviewCommand(console, asked).ownRules();
  }

  private int policy(GateUsage gate, Usage usage) {
    PolicyCommand command = new PolicyCommand(console);
    return gate.asksForLimits()
        ? command.limits()
        : command.run(gate.job(), askedDesk(usage).policy(gate.job()));
  }

  private int completion(String shell) {
    List<String> known = List.of("bash", "zsh", "fish");
    if (!known.contains(shell)) {
      throw new UsageException(
          "completion is for bash, zsh and fish, not " + shell + Hint.of(Nearest.to(shell, known)));
    }
    CommandLine tree = CommandTree.create();
    CompletedWords words = CompletedWords.of(rules.get(), known);
    console.print(
        switch (shell) {
          case "fish" -> FishCompletion.of(tree, words);
          case "zsh" -> ZshCompletion.of(tree, words);
          default -> BashCompletion.of(tree, words);
        });
    return ExitCode.CLEAR;
  }

  private int help(CommandLine command) {
    console.print(command.getUsageMessage());
    return ExitCode.CLEAR;
  }

  private int version() {
    console.print(CommandTree.PROGRAM + " " + Version.text() + "\n");
    return ExitCode.CLEAR;
  }

  private int nothingAsked(ParseResult root) {
    String help = root.commandSpec().commandLine().getUsageMessage();
    console.complain("no command given");
    console.print(help);
    return ExitCode.UNUSABLE;
  }
}
