package clampwise.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Writes the completion for bash, down to version 3.2. Where files are wanted it offers nothing, so
 * that the shell completes them its own way.
 */
final class BashCompletion {

  private static final String SCRIPT =
      """
      # Completion of clampwise: source <(clampwise completion bash)
      _clampwise() {
        local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
        local command= place=0 words= i
        for ((i = 1; i < COMP_CWORD; i++)); do
          case ${COMP_WORDS[i]} in
            -*) ;;
            *) [ -n "$command" ] && place=$((place + 1)) || command=${COMP_WORDS[i]} ;;
          esac
        done
        case $command,$before in
      %s    *)
            case $command,$place,$word in
      %s      esac
            ;;
        esac
        COMPREPLY=($(compgen -W "$words" -- "$word"))
      }
      complete -o default -F _clampwise clampwise
      """;

  private BashCompletion() {}

  static String of(CommandLine tree, CompletedWords words) {
    StringBuilder values = new StringBuilder();
    StringBuilder commands = new StringBuilder();
    commands.append(row(",*", join(tree.getSubcommands().keySet(), options(tree))));
    tree.getSubcommands()
        .forEach(
            (name, command) -> {
              command.getCommandSpec().options().forEach(option -> value(name, option, values));
              commands.append(row(name + ",*,-*", options(command)));
              List<String> first = words.first(name);
              commands.append(first.isEmpty() ? "" : row(name + ",0,*", first));
            });
    return SCRIPT.formatted(values.toString().indent(4), commands.toString().indent(8));
  }

  private static void value(String command, OptionSpec option, StringBuilder rows) {
    List<String> values = CompletedWords.values(option);
    if (!values.isEmpty() || CompletedWords.takesFile(option)) {
      rows.append(row(command + "," + option.longestName(), values));
    }
  }

  private static List<String> options(CommandLine command) {
    CommandSpec spec = command.getCommandSpec();
    return spec.options().stream().flatMap(option -> List.of(option.names()).stream()).toList();
  }

  private static List<String> join(Iterable<String> commands, List<String> options) {
    List<String> all = new ArrayList<>();
    commands.forEach(all::add);
    all.addAll(options);
    return all;
  }

  private static String row(String when, List<String> words) {
    return when + ") words='" + String.join(" ", words) + "' ;;\n";
  }
}
