package clampwise.report;

/**
 * Texts of a job in Markdown that a code host shows: neither markup, nor a link, nor a call of a
 * person or of another request.
 */
final class MarkdownWords {

  private static final String MARKUP = "\\`*_[]<>#|~&$";

  /** What code hosts make a reference of where a name or a number follows. */
  private static final String CALLS = "@#!~&$%^";

  /** Has no width and parts no line; it only keeps two characters from being read together. */
  private static final char JOINER = '\u2060';

  private MarkdownWords() {}

  /** The text within a line. */
  static String of(String text) {
    String plain = Harmless.of(text);
    StringBuilder out = new StringBuilder(plain.length() + 16);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (MARKUP.indexOf(c) >= 0) {
        out.append('\\');
      }
      out.append(c);
      if (calls(plain, i)) {
        out.append(JOINER);
      }
    }
    return out.toString();
  }

  /** The same, cut after so many characters. */
  static String of(String text, int most) {
    if (text.codePointCount(0, text.length()) <= most) {
      return of(text);
    }
    return of(text.substring(0, text.offsetByCodePoints(0, most))) + "…";
  }

  private static boolean calls(String text, int at) {
    char c = text.charAt(at);
    boolean before = at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1));
    return CALLS.indexOf(c) >= 0 && before
        || c == ':' && text.startsWith("//", at + 1)
        || c == '.' && text.regionMatches(true, at - 3, "www", 0, 3);
  }
}
