package clampwise.units;

/** Walks over a text, character by character. */
final class Scanner {

  private final String text;
  private int place;

  Scanner(String text) {
    this.text = text;
  }

  boolean atEnd() {
    return place >= text.length();
  }

  int place() {
    return place;
  }

  void backTo(int earlier) {
    place = earlier;
  }

  void advance() {
    place++;
  }

  /** The character {@code ahead} places on; a line end past the end. */
  char peek(int ahead) {
    int index = place + ahead;
    return index >= 0 && index < text.length() ? text.charAt(index) : '\n';
  }

  char peek() {
    return peek(0);
  }

  /** Takes a sign if one stands here; true for minus. */
  boolean sign() {
    char c = peek();
    if (c == '-' || c == '−' || c == '+') {
      advance();
    }
    return c == '-' || c == '−';
  }

  void spaces() {
    while (isSpace(peek())) {
      advance();
    }
  }

  /** Takes the digits that stand here. */
  String digits() {
    int start = place;
    while (isDigit(peek())) {
      advance();
    }
    return text.substring(start, place);
  }

  /** Takes digits, points and commas. */
  String digitsPointsCommas() {
    int start = place;
    while (isDigit(peek()) || ((peek() == '.' || peek() == ',') && isDigit(peek(1)))) {
      advance();
    }
    return text.substring(start, place);
  }

  /** Takes the spelling of a unit: all up to the next number. */
  String unit() {
    spaces();
    int start = place;
    if (peek() == ':') {
      advance();
      spaces();
      digitsPointsCommas();
    }
    while (!atEnd() && !startsNumber()) {
      advance();
    }
    return text.substring(start, place);
  }

  private boolean startsNumber() {
    boolean decimal = peek() == '.' && isDigit(peek(1));
    return decimal || isFraction(peek()) || (isDigit(peek()) && !isExponent());
  }

  /** The 2 of {@code mm2}. */
  private boolean isExponent() {
    boolean power = peek() == '2' || peek() == '3';
    return power && Character.isLetter(peek(-1)) && !Character.isLetterOrDigit(peek(1));
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u2009' || c == '\u202f';
  }

  static boolean isFraction(char c) {
    return FigureScanner.FRACTIONS.indexOf(c) >= 0;
  }
}
