package clampwise.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Writes the completion of commands and options for the fish shell. */
final class FishCompletion {

  private final StringBuilder out = new StringBuilder();

  private final CompletedWords completed;

  private FishCompletion(CompletedWords completed) {
    this.completed = completed;
  }

  static String of(CommandLine tree, CompletedWords completed) {
    FishCompletion completion = new FishCompletion(completed);
    completion.root(tree.getCommandSpec());
    tree.getSubcommands().values().stream()
        .map(CommandLine::getCommandSpec)
        .forEach(completion::command);
    return completion.out.toString();
  }

  private void root(CommandSpec root) {
    for (OptionSpec option : root.options()) {
      line("__fish_use_subcommand", words(option));
    }
    root.subcommands()
        .forEach((name, command) -> line("__fish_use_subcommand", named(name, command)));
  }

  private static List<String> named(String name, CommandLine command) {
    String description = command.getCommandSpec().usageMessage().description()[0];
    return List.of("-f", "-a", name, "-d", quoted(description));
  }

  private void command(CommandSpec command) {
    String seen = "__fish_seen_subcommand_from " + command.name();
    command.options().forEach(option -> line(seen, words(option)));
    List<String> first = completed.first(command.name());
    if (!first.isEmpty()) {
      line(seen, List.of("-f", "-a", quoted(String.join(" ", first))));
    } else if (!CompletedWords.takesFiles(command.name())) {
      line(seen, List.of("-f"));
    }
  }

  private static List<String> words(OptionSpec option) {
    List<String> words = new ArrayList<>();
    for (String name : option.names()) {
      words.add(name.startsWith("--") ? "-l" : "-s");
      words.add(name.replaceFirst("^-+", ""));
    }
    String values = String.join(" ", CompletedWords.values(option));
    if (CompletedWords.takesFile(option)) {
      words.addAll(List.of("-r", "-F"));
    } else if (!values.isEmpty()) {
      words.addAll(List.of("-x", "-a", quoted(values)));
    }
    words.addAll(List.of("-d", quoted(option.description()[0])));
    return words;
  }

  private void line(String when, List<String> words) {
    out.append("complete -c ").append(CommandTree.PROGRAM).append(" -n ").append(quoted(when));
    words.forEach(word -> out.append(' ').append(word));
    out.append('\n');
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
