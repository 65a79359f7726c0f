package clampwise.report;

/**
 * Makes texts of a job safe to print: what a terminal would obey, hide or reorder is spelled out as
 * {@code \\u{1b}}.
 */
public final class Harmless {

  private Harmless() {}

  /** The text with every control, format and separator character spelled out; tabs are blanks. */
  public static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!isPlain(text.charAt(i))) {
        return printsFrom(text, i) ? text : spelledOut(text);
      }
    }
    return text;
  }

  private static boolean printsFrom(String text, int start) {
    boolean prints = true;
    for (int i = start; prints && i < text.length(); i = text.offsetByCodePoints(i, 1)) {
      prints = prints(text.codePointAt(i));
    }
    return prints;
  }

  /** The same for Markdown: what would be markup there is escaped. */
  public static String markdown(String text) {
    StringBuilder out = new StringBuilder();
    for (char c : of(text).toCharArray()) {
      if ("\\`*_[]<>#|~&".indexOf(c) >= 0) {
        out.append('\\');
      }
      out.append(c);
    }
    return out.toString();
  }

  /** Whether a character is one of those that nearly every text consists of. */
  private static boolean isPlain(char c) {
    return c >= ' ' && c <= '~';
  }

  private static String spelledOut(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(code -> append(out, code));
    return out.toString();
  }

  private static void append(StringBuilder out, int code) {
    if (prints(code)) {
      out.appendCodePoint(code);
    } else if (code == '\t' || code == '\n') {
      out.append(' ');
    } else {
      out.append("\\u{").append(Integer.toHexString(code)).append('}');
    }
  }

  private static boolean prints(int code) {
    return switch (Character.getType(code)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED,
          Character.PRIVATE_USE ->
          false;
      default -> true;
    };
  }
}
