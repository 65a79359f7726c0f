package clampwise.report;

/** How many terminal columns a text takes. */
final class Columns {

  /** First code point that any terminal shows two columns wide (Hangul Jamo). */
  private static final int FIRST_WIDE = 0x1100;

  /** First code point that may take another width than one column (combining marks). */
  private static final int FIRST_UNUSUAL = 0x300;

  private Columns() {}

  /** Columns of a text [columns]. */
  static int of(String text) {
    int columns = 0;
    while (columns < text.length() && text.charAt(columns) < FIRST_UNUSUAL) {
      columns++;
    }
    return columns == text.length() ? columns : unusual(text);
  }

  private static int unusual(String text) {
    int columns = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      columns += of(text.codePointAt(i));
    }
    return columns;
  }

  /** Columns of one code point: 0 for combining marks, 2 for East Asian wide ones, else 1. */
  static int of(int code) {
    if (code < FIRST_UNUSUAL) {
      return 1;
    }
    return combines(code) ? 0 : isWide(code) ? 2 : 1;
  }

  private static boolean combines(int code) {
    int type = Character.getType(code);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }

  private static boolean isWide(int code) {
    return code >= FIRST_WIDE
        && (code <= 0x115f
            || code >= 0x2e80 && code <= 0xa4cf
            || code >= 0xac00 && code <= 0xd7a3
            || code >= 0xf900 && code <= 0xfaff
            || code >= 0xfe30 && code <= 0xfe6f
            || code >= 0xff00 && code <= 0xff60
            || code >= 0x1f300 && code <= 0x1faff
            || code >= 0x20000 && code <= 0x3fffd);
  }
}
