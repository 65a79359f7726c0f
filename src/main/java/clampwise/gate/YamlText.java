package clampwise.gate;

/** Values as YAML takes them, in quotes where they would mean something else without. */
final class YamlText {

  private static final int FIRST_PRINTABLE = 0x20;
  private static final int LAST_OF_ASCII = 0x7e;

  private YamlText() {}

  /** A text that reads back as itself, whatever is in it. */
  static String of(String value) {
    return isPlain(value) ? value : quoted(value);
  }

  /** Only what can mean nothing else stays without quotes. */
  private static boolean isPlain(String value) {
    if (value.isEmpty() || !isLetter(value.charAt(0)) || value.endsWith(" ")) {
      return false;
    }
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      boolean within = c == ' ' || c == '-' || c == '.' || c == '/' || c == '_' || c == '(';
      if (!isLetter(c) && !(c >= '0' && c <= '9') && !within && c != ')') {
        return false;
      }
    }
    return !isWord(value);
  }

  private static boolean isLetter(char c) {
    return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
  }

  private static boolean isWord(String value) {
    return switch (value.toLowerCase(java.util.Locale.ROOT)) {
      case "null", "true", "false", "yes", "no", "on", "off" -> true;
      default -> false;
    };
  }

  private static String quoted(String value) {
    StringBuilder text = new StringBuilder("\"");
    value
        .codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                text.append('\\').appendCodePoint(c);
              } else if (c < FIRST_PRINTABLE || c > LAST_OF_ASCII && !Character.isLetter(c)) {
                text.append(escaped(c));
              } else {
                text.appendCodePoint(c);
              }
            });
    return text.append('"').toString();
  }

  private static String escaped(int c) {
    String digits = Integer.toHexString(c);
    return "\\U" + "0".repeat(8 - digits.length()) + digits;
  }
}
