package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Position;
import clampwise.source.Span;
import java.util.Optional;

/** Two quantities written as one value; each keeps its own place. */
record Pair(Node.Scalar first, Node.Scalar second) {

  static Optional<Pair> ofItems(Node.Sequence list) {
    return list.items().size() == 2
            && list.items().get(0) instanceof Node.Scalar first
            && list.items().get(1) instanceof Node.Scalar second
        ? Optional.of(new Pair(first, second))
        : Optional.empty();
  }

  /** {@code 6 ft, 3 ft}. */
  static Optional<Pair> ofSpot(Node.Scalar scalar) {
    return cut(scalar, scalar.text().indexOf(','), 1);
  }

  /** {@code 100 ft x 31 ft 7 in}; a first number without a unit takes the second one's. */
  static Optional<Pair> ofSize(Node.Scalar scalar) {
    String text = scalar.text();
    int sign = text.indexOf('×');
    return cut(scalar, sign >= 0 ? sign : text.indexOf('x'), 1).map(Pair::withSharedUnit);
  }

  /** {@code 30 mm to 40 mm}, {@code 30 to 40 mm} or {@code 30-40 mm}. */
  static Optional<Pair> ofRange(Node.Scalar scalar) {
    int to = scalar.text().indexOf(" to ");
    return (to >= 0 ? cut(scalar, to, 4) : cut(scalar, dashBetweenNumbers(scalar.text()), 1))
        .map(Pair::withSharedUnit);
  }

  private static int dashBetweenNumbers(String text) {
    int i = 0;
    while (i < text.length() && (isPlain(text.charAt(i)) || text.charAt(i) == ' ')) {
      i++;
    }
    boolean dash = i > 0 && i < text.length() && (text.charAt(i) == '-' || text.charAt(i) == '–');
    return dash ? i : -1;
  }

  private static Optional<Pair> cut(Node.Scalar scalar, int at, int width) {
    String text = scalar.text();
    if (at <= 0 || at + width >= text.length()) {
      return Optional.empty();
    }
    return Optional.of(new Pair(part(scalar, 0, at), part(scalar, at + width, text.length())));
  }

  private static Node.Scalar part(Node.Scalar whole, int from, int to) {
    String text = whole.text().substring(from, to);
    int skipped = text.length() - text.stripLeading().length();
    String bare = text.strip();
    return new Node.Scalar(bare, whole.quoted(), span(whole, from + skipped, bare));
  }

  /** Quoted text may hold escapes, so only in plain text can a part be pointed at. */
  private static Span span(Node.Scalar whole, int from, String text) {
    Span at = whole.at();
    if (whole.quoted() || at.start().line() != at.end().line()) {
      return at;
    }
    int column = at.start().column() + whole.text().codePointCount(0, from);
    int end = column + text.codePointCount(0, text.length());
    int line = at.start().line();
    return new Span(at.file(), new Position(line, column), new Position(line, end));
  }

  private Pair withSharedUnit() {
    String text = second.text();
    int i = 0;
    while (i < text.length() && isPlain(text.charAt(i))) {
      i++;
    }
    boolean bare = !first.text().isEmpty() && first.text().chars().allMatch(Pair::isPlain);
    String unit = text.substring(i).strip();
    boolean hasUnit = i > 0 && unit.chars().noneMatch(Character::isDigit) && !unit.isEmpty();
    return bare && hasUnit
        ? new Pair(new Node.Scalar(first.text() + " " + unit, first.quoted(), first.at()), second)
        : this;
  }

  private static boolean isPlain(int c) {
    return (c >= '0' && c <= '9') || c == '.';
  }
}
