package clampwise.source;

/** A text on the way of {@link QuickYaml}, with the place it has come to. */
final class QuickText {

  /** What {@link QuickYaml} leaves to the whole parser. */
  static final class Unusual extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unusual() {
      super("", null, false, false);
    }
  }

  private static final char END = '\0';

  /** Longer keys are no keys, with the spaces up to their colons. */
  private static final int LONGEST_KEY = 1000;

  private final String file;
  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;

  /** Where the last scalar began. */
  private int scalarStart;

  QuickText(String file, String text) {
    this.file = file;
    this.text = text;
  }

  /** Whether every character is one that stands for itself and counts as one column. */
  static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean usual = c >= ' ' && c <= '~' || c == '\n' || isLetterBeyond(c);
      if (!usual) {
        return false;
      }
    }
    return true;
  }

  private static boolean isLetterBeyond(char c) {
    return c >= 0xA0 && c < 0xD800 && c != 0x2028 && c != 0x2029;
  }

  void need(boolean usual) {
    if (!usual) {
      throw new Unusual();
    }
  }

  boolean isAtEnd() {
    return at >= text.length();
  }

  char peek() {
    return peek(0);
  }

  private char peek(int ahead) {
    return at + ahead < text.length() ? text.charAt(at + ahead) : END;
  }

  void skip(int characters) {
    at += characters;
  }

  /** Column from zero. */
  int column() {
    return at - lineStart;
  }

  Position position() {
    return new Position(line, at - lineStart + 1);
  }

  Span span(Position start, Position end) {
    return new Span(file, start, end);
  }

  Node.Scalar nothingHere() {
    Position here = position();
    return new Node.Scalar("", false, span(here, here));
  }

  void skipSpaces() {
    while (peek() == ' ') {
      at++;
    }
  }

  /** Whether only a comment or nothing stands before the end of the line. */
  boolean isRestEmpty() {
    char c = peek();
    return c == '\n' || c == END || c == '#' && isAfterSpace();
  }

  private boolean isAfterSpace() {
    return at == lineStart || text.charAt(at - 1) == ' ';
  }

  void needRestEmpty() {
    skipSpaces();
    need(isRestEmpty());
  }

  /** Goes over spaces, comments and ends of lines. */
  void skipToContent() {
    while (true) {
      skipSpaces();
      if (peek() == '#' && isAfterSpace()) {
        int end = text.indexOf('\n', at);
        at = end < 0 ? text.length() : end;
      }
      if (peek() != '\n') {
        return;
      }
      at++;
      line++;
      lineStart = at;
    }
  }

  /** Whether an item of a list begins here. */
  boolean isDash() {
    return peek() == '-' && isBlank(peek(1));
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\n' || c == END;
  }

  boolean isBracket() {
    return peek() == '{' || peek() == '[';
  }

  boolean isQuote() {
    return peek() == '"' || peek() == '\'';
  }

  /** Goes over the colon behind a key, if one is there. */
  boolean takeColon() {
    int before = at;
    skipSpaces();
    if (peek() == ':' && isBlank(peek(1))) {
      need(at - scalarStart <= LONGEST_KEY);
      at++;
      return true;
    }
    at = before;
    return false;
  }

  /** A text in quotes that holds neither escapes nor ends of lines. */
  Node.Scalar quoted() {
    char quote = peek();
    Position start = position();
    scalarStart = at;
    int from = ++at;
    for (char c = peek(); c != quote; c = peek()) {
      need(c != END && c != '\n' && c != '\\');
      at++;
    }
    String value = text.substring(from, at);
    at++;
    need(peek() != quote && value.length() <= LONGEST_KEY);
    return new Node.Scalar(value, true, span(start, position()));
  }

  /** A text without quotes, to the end of its line or to what ends it before. */
  Node.Scalar plain(boolean inBrackets) {
    need(begins(inBrackets));
    Position start = position();
    scalarStart = at;
    int from = at;
    int end = at;
    while (!ends(inBrackets)) {
      end = peek() == ' ' ? end : at + 1;
      at++;
    }
    at = end;
    need(end > from && end - from <= LONGEST_KEY);
    return new Node.Scalar(text.substring(from, end), false, span(start, position()));
  }

  private boolean begins(boolean inBrackets) {
    char c = peek();
    char next = peek(1);
    if (c == '-' || c == '.') {
      boolean marker = column() == 0 && next == c && peek(2) == c;
      return !marker && !isBlank(next) && !(inBrackets && isIndicator(next));
    }
    return ",[]{}#&*!|>'\"%@`?: \n".indexOf(c) < 0 && c != END;
  }

  private static boolean isIndicator(char c) {
    return ",[]{}".indexOf(c) >= 0;
  }

  private boolean ends(boolean inBrackets) {
    char c = peek();
    if (c == '\n' || c == END || inBrackets && isIndicator(c)) {
      return true;
    }
    if (c == ':') {
      need(!(inBrackets && isIndicator(peek(1))));
      return isBlank(peek(1));
    }
    return c == '#' && isAfterSpace();
  }
}
