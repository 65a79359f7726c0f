package clampwise.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Writes the completion for zsh: to be sourced, or put on the path of functions. */
final class ZshCompletion {

  private static final String SCRIPT =
      """
      #compdef clampwise
      # Completion of clampwise, after compinit: source <(clampwise completion zsh)
      _clampwise() {
        local context state state_descr line
        typeset -A opt_args
        local -a commands
        commands=(
      %s  )
        _arguments -C %s '1: :->command' '*:: :->rest'
        case $state in
          command) _describe -t commands command commands ;;
          rest)
            case $words[1] in
      %s      esac
            ;;
        esac
      }
      if [ "$funcstack[1]" = _clampwise ]; then
        _clampwise "$@"
      else
        compdef _clampwise clampwise
      fi
      """;

  private ZshCompletion() {}

  static String of(CommandLine tree, CompletedWords words) {
    StringBuilder commands = new StringBuilder();
    StringBuilder rest = new StringBuilder();
    tree.getSubcommands()
        .forEach(
            (name, command) -> {
              String description = command.getCommandSpec().usageMessage().description()[0];
              commands.append(quoted(escaped(name) + ":" + description)).append('\n');
              rest.append(name).append(") _arguments ");
              rest.append(String.join(" ", options(command.getCommandSpec())));
              rest.append(words(name, words)).append(" ;;\n");
            });
    return SCRIPT.formatted(
        commands.toString().indent(4),
        String.join(" ", options(tree.getCommandSpec())),
        rest.toString().indent(8));
  }

  private static String words(String command, CompletedWords words) {
    List<String> first = words.first(command);
    if (!first.isEmpty()) {
      return " " + quoted("1: :(" + String.join(" ", first) + ")");
    }
    return CompletedWords.takesFiles(command) ? " " + quoted("*: :_files") : "";
  }

  private static List<String> options(CommandSpec command) {
    List<String> options = new ArrayList<>();
    for (OptionSpec option : command.options()) {
      String names = String.join(" ", option.names());
      for (String name : option.names()) {
        options.add(
            quoted(
                "(%s)%s[%s]%s"
                    .formatted(names, name, escaped(option.description()[0]), value(option))));
      }
    }
    return options;
  }

  private static String value(OptionSpec option) {
    List<String> values = CompletedWords.values(option);
    if (!values.isEmpty()) {
      return ": :(" + String.join(" ", values) + ")";
    }
    return CompletedWords.takesFile(option) ? ": :_files" : "";
  }

  /** Colons and brackets end a description. */
  private static String escaped(String text) {
    return text.replaceAll("([:\\[\\]])", "\\\\$1");
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }
}
