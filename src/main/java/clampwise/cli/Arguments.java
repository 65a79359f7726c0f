package clampwise.cli;

import clampwise.source.Nearest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Reads arguments and says in this program's words what is wrong with them. */
final class Arguments {

  private Arguments() {}

  static ParseResult parse(String... arguments) {
    if (arguments.length > 0 && arguments[0].equals("help")) {
      throw new UsageException("for help, write clampwise --help or clampwise COMMAND --help");
    }
    try {
      return CommandTree.create().parseArgs(arguments);
    } catch (UnmatchedArgumentException e) {
      throw new UsageException(unknown(e.getCommandLine(), e.getUnmatched().get(0)));
    } catch (MissingParameterException e) {
      throw new UsageException(missing(e));
    } catch (ParameterException e) {
      throw new UsageException(e.getMessage() + "; see " + help(e.getCommandLine()));
    }
  }

  private static String unknown(CommandLine command, String word) {
    if (word.startsWith("-")) {
      return "there is no option "
          + word
          + Hint.of(Nearest.to(word, options(command)))
          + see(command);
    }
    if (command.getParent() != null) {
      return word + " is one word too many" + see(command);
    }
    if (word.endsWith(".yaml") || word.endsWith(".yml") || word.endsWith(".json")) {
      return "to review a job, write clampwise review " + word;
    }
    Collection<String> commands = command.getSubcommands().keySet();
    return "there is no command " + word + Hint.of(Nearest.to(word, commands)) + see(command);
  }

  private static String missing(MissingParameterException missing) {
    List<String> labels = new ArrayList<>();
    missing.getMissing().forEach(one -> labels.add(one.paramLabel()));
    String option = missing.getMissing().get(0).isOption() ? "a value " : "";
    return option + String.join(" ", labels) + " is missing" + see(missing.getCommandLine());
  }

  private static List<String> options(CommandLine command) {
    List<String> names = new ArrayList<>();
    for (OptionSpec option : command.getCommandSpec().options()) {
      names.addAll(List.of(option.names()));
    }
    return names;
  }

  private static String see(CommandLine command) {
    return "; see " + help(command);
  }

  private static String help(CommandLine command) {
    return command.getCommandSpec().qualifiedName() + " --help";
  }
}
