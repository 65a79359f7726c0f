package clampwise.rulebook.own;

import clampwise.rulebook.build.RuleText;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule file under the name by which whoever runs the program knows it.
 *
 * @param rule its text
 * @param shown its name
 * @param code its text without comments
 * @param bare its text without comments and without what stands between quotes
 */
record RuleSource(RuleText rule, String shown, String code, String bare) {
  private static final Pattern WHEN = Pattern.compile("(?m)^\\s*when\\b");
  private static final Pattern THEN = Pattern.compile("(?m)^\\s*then\\b");

  static RuleSource of(RuleText rule, String shown) {
    String text = rule.text();
    return new RuleSource(rule, shown, Blanked.comments(text), Blanked.texts(text));
  }

  /** Where the conditions begin; the end of the text if there are none. */
  int when() {
    return first(WHEN);
  }

  /** Where the right side begins; the end of the text if there is none. */
  int then() {
    return first(THEN);
  }

  private int first(Pattern word) {
    Matcher found = word.matcher(bare);
    return found.find() ? found.end() : bare.length();
  }

  /** The conditions, without what stands between quotes. */
  String conditions() {
    return bare.substring(Math.min(when(), then()), then());
  }

  /** Where the conditions stand. */
  Span conditionsAt() {
    int start = when();
    while (start < bare.length() && Character.isWhitespace(bare.charAt(start))) {
      start++;
    }
    return span(start, start);
  }

  Span span(MatchResult found, int group) {
    return span(found.start(group), found.end(group));
  }

  Span span(int start, int end) {
    return new Span(shown, position(start), position(end));
  }

  /** The start of a line, counted from one; a blank start of it is passed over. */
  Span line(int number, int column) {
    Position at = new Position(Math.max(1, number), Math.max(1, column));
    return new Span(shown, at, at);
  }

  private Position position(int offset) {
    String before = rule.text().substring(0, Math.min(offset, rule.text().length()));
    int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
    int start = before.lastIndexOf('\n') + 1;
    return new Position(line, before.codePointCount(start, before.length()) + 1);
  }

  Problem problem(Span at, String found, String expected) {
    return problem(at, found, expected, Optional.empty());
  }

  Problem problem(Span at, String found, String expected, Optional<String> nearest) {
    return new Problem(at, found, expected, nearest);
  }

  /** A problem of the file as a whole. */
  Problem problem(String found, String expected) {
    return problem(Span.startOf(shown), found, expected);
  }
}
