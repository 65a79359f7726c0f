package clampwise.rulebook.own;

import clampwise.source.Nearest;
import clampwise.source.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds in conditions that did not compile the words that name nothing. */
final class FieldCheck {
  private static final Pattern PATTERN =
      Pattern.compile("(?:[:(]|\\bnot\\b|\\bexists\\b)\\s*([A-Z]\\w*)\\s*\\(");
  private static final Pattern WORD = Pattern.compile("(?<![\\w.$])([a-z]\\w*)(?!\\w)(?!\\s*[(:])");
  private static final Set<String> WORDS =
      Set.of(
          "null",
          "true",
          "false",
          "this",
          "in",
          "not",
          "matches",
          "contains",
          "excludes",
          "memberOf",
          "instanceof",
          "new",
          "str",
          "soundslike",
          "after",
          "before",
          "exists");

  private final RuleSource source;
  private final FactTypes facts;
  private final List<Problem> problems = new ArrayList<>();

  private FieldCheck(RuleSource source, FactTypes facts) {
    this.source = source;
    this.facts = facts;
  }

  static List<Problem> of(RuleSource source, FactTypes facts) {
    FieldCheck check = new FieldCheck(source, facts);
    Matcher pattern = PATTERN.matcher(source.bare());
    pattern.region(Math.min(source.when(), source.then()), source.then());
    while (pattern.find()) {
      check.pattern(pattern);
    }
    return check.problems;
  }

  private void pattern(Matcher pattern) {
    String type = pattern.group(1);
    if (facts.find(type).isEmpty()) {
      Optional<String> near = Nearest.to(type, facts.names());
      problems.add(
          source.problem(
              source.span(pattern, 1),
              "no fact called " + type,
              "a fact of docs/facts.md that is imported",
              near));
      return;
    }
    words(type, pattern.end(), end(pattern.end()));
  }

  /** Where the bracket closes that was opened before. */
  private int end(int from) {
    int open = 1;
    int at = from;
    while (at < source.then() && open > 0) {
      char c = source.bare().charAt(at++);
      open += c == '(' ? 1 : c == ')' ? -1 : 0;
    }
    return at;
  }

  private void words(String type, int from, int to) {
    List<String> known = facts.components(type);
    Matcher word = WORD.matcher(source.bare()).region(from, to).useTransparentBounds(true);
    while (word.find()) {
      String name = word.group(1);
      if (!known.contains(name) && !WORDS.contains(name)) {
        String expected = "something that " + type + " holds (docs/facts.md)";
        problems.add(
            source.problem(source.span(word, 1), "no " + name, expected, Nearest.to(name, known)));
      }
    }
  }
}
