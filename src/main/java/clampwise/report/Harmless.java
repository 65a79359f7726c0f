package clampwise.report;

/**
 * Makes texts of a job safe to print: what a terminal would obey, hide or reorder is spelled out as
 * {@code \\u{1b}}.
 */
public final class Harmless {

  private Harmless() {}

  /** The text with every control, format and separator character spelled out; tabs are blanks. */
  public static String of(String text) {
    return text.codePoints().allMatch(Harmless::prints) ? text : spelledOut(text);
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
