package clampwise.rulebook.own;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Text of a rule in which what is no code became blanks; every character keeps its place. */
final class Blanked {
  private static final String TEXT = "\"(?:\\\\.|[^\"\\\\\\n])*\"";
  private static final Pattern COMMENTS = Pattern.compile(TEXT + "|//[^\\n]*|(?s:/\\*.*?\\*/)");
  private static final Pattern TEXTS = Pattern.compile(TEXT);
  private static final Pattern VISIBLE = Pattern.compile("[^\\n]");

  private Blanked() {}

  /** Without comments. */
  static String comments(String text) {
    return COMMENTS.matcher(text).replaceAll(Blanked::unlessText);
  }

  /** Without comments and without what stands between quotes. */
  static String texts(String text) {
    return TEXTS.matcher(comments(text)).replaceAll(Blanked::blank);
  }

  private static String unlessText(MatchResult found) {
    return found.group().startsWith("\"")
        ? java.util.regex.Matcher.quoteReplacement(found.group())
        : blank(found);
  }

  private static String blank(MatchResult found) {
    return VISIBLE.matcher(found.group()).replaceAll(" ");
  }
}
