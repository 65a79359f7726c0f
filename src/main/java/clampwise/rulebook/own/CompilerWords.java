package clampwise.rulebook.own;

import clampwise.source.Problem;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in plain words what the compiler has against a rule, and where. */
final class CompilerWords {
  private static final Pattern SYNTAX =
      Pattern.compile("\\[ERR \\d+] Line (\\d+):(\\d+) [^']*'([^']*)'.*");
  private static final Pattern NO_BOOLEAN = Pattern.compile("Predicate '(.*)' must be .*");
  private static final String CONDITION = "a condition that compares what the fact holds";

  private final RuleSource source;

  private CompilerWords(RuleSource source) {
    this.source = source;
  }

  /**
   * The first thing that is wrong with a rule.
   *
   * @param errors what the compiler said, one line an error
   */
  static List<Problem> of(RuleSource source, FactTypes facts, String errors) {
    List<Problem> unknown = FieldCheck.of(source, facts);
    CompilerWords words = new CompilerWords(source);
    String first = errors.lines().findFirst().orElse("");
    Optional<Problem> syntax = words.syntax(first);
    return syntax.isEmpty() && !unknown.isEmpty()
        ? unknown
        : List.of(syntax.orElseGet(() -> words.other(first)));
  }

  private Optional<Problem> syntax(String error) {
    Matcher line = SYNTAX.matcher(error);
    if (!line.matches()) {
      return Optional.empty();
    }
    String word = line.group(3).strip();
    int number = Integer.parseInt(line.group(1));
    int column = Integer.parseInt(line.group(2)) + 1;
    boolean ends = word.isEmpty() || word.equals("<eof>");
    String found =
        ends ? "the end of the file inside the rule" : word + ", which cannot stand here";
    String expected =
        ends
            ? "a closing quote, a closing bracket and end"
            : "closed brackets and quotes, a comma between conditions, and the order package,"
                + " import, global, rule, when, then, end";
    return Optional.of(source.problem(source.line(number, column), found, expected));
  }

  private Problem other(String error) {
    Matcher predicate = NO_BOOLEAN.matcher(error);
    if (predicate.matches()) {
      return at(predicate.group(1), predicate.group(1) + ", which is neither true nor false");
    }
    int colon = error.lastIndexOf(": ");
    String subject = colon < 0 ? "" : error.substring(colon + 2);
    return at(subject, "conditions that do not compile: " + error);
  }

  private Problem at(String words, String found) {
    int at = words.isBlank() ? -1 : source.code().indexOf(words);
    return at < 0
        ? source.problem(source.conditionsAt(), found, CONDITION)
        : source.problem(source.span(at, at + words.length()), found, CONDITION);
  }
}
