package clampwise.cli;

import clampwise.calculation.Calculation;
import clampwise.calculation.Calculations;
import clampwise.rulebook.RulePage;
import java.util.List;
import java.util.stream.StreamSupport;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What shells offer for the words of commands.
 *
 * @param rules ids of all rules
 * @param calculations names of all calculations
 */
record CompletedWords(List<String> rules, List<String> calculations, List<String> shells) {

  static CompletedWords of(List<RulePage> rules, List<String> shells) {
    return new CompletedWords(
        rules.stream().map(RulePage::id).toList(),
        Calculations.all().stream().map(Calculation::name).toList(),
        shells);
  }

  /** The first words that a command takes; none where it takes files or nothing. */
  List<String> first(String command) {
    return switch (command) {
      case "explain" -> rules;
      case "calc" -> calculations;
      case "completion" -> shells;
      case "rules" -> RulesCommand.ACTIONS;
      default -> List.of();
    };
  }

  /** Whether a command takes files. */
  static boolean takesFiles(String command) {
    return List.of("review", "merge", "takeoff", "start").contains(command);
  }

  /** Whether the value of an option is a file or a folder. */
  static boolean takesFile(OptionSpec option) {
    return List.of("FILE", "FOLDER").contains(option.paramLabel());
  }

  /** The values of an option, if they are words of a list. */
  static List<String> values(OptionSpec option) {
    return option.completionCandidates() == null
        ? List.of()
        : StreamSupport.stream(option.completionCandidates().spliterator(), false).toList();
  }
}
