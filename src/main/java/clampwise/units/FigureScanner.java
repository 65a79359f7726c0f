package clampwise.units;

import clampwise.units.Figure.Commas;
import java.util.Arrays;
import java.util.Optional;

/** Reads one number: a decimal, grouped thousands, a fraction, or a whole number and a fraction. */
final class FigureScanner {

  static final String FRACTIONS = "½¼¾⅛⅜⅝⅞";
  private static final double[] EIGHTHS = {4, 2, 6, 1, 3, 5, 7};
  private static final int LONGEST = 30;

  private final Scanner scanner;

  FigureScanner(Scanner scanner) {
    this.scanner = scanner;
  }

  Optional<Figure> figure() {
    scanner.spaces();
    if (Scanner.isFraction(scanner.peek())) {
      return Optional.of(withSign(Figure.decimal(0, Commas.NONE)));
    }
    String written = spacedThousands(scanner.digitsPointsCommas());
    if (written.isEmpty() || written.length() > LONGEST) {
      return Optional.empty();
    }
    return scanner.peek() == '/' ? fraction(written) : decimal(written).map(this::withFraction);
  }

  /** The groups of {@code 1 722}, of which the first was taken already. */
  private String spacedThousands(String first) {
    StringBuilder all = new StringBuilder(first);
    boolean whole = first.length() <= 3 && first.chars().allMatch(c -> Scanner.isDigit((char) c));
    while (whole && !first.isEmpty() && isGroupAhead() && all.length() < LONGEST) {
      scanner.advance();
      all.append(scanner.digits());
    }
    return all.toString();
  }

  private boolean isGroupAhead() {
    boolean digits = true;
    for (int i = 1; i <= 3; i++) {
      digits &= Scanner.isDigit(scanner.peek(i));
    }
    char next = scanner.peek(4);
    return Scanner.isSpace(scanner.peek()) && digits && !Scanner.isDigit(next) && next != '/';
  }

  /** {@code 5/8}, where {@code 5} was taken already. */
  private Optional<Figure> fraction(String over) {
    scanner.advance();
    String under = scanner.digits();
    if (under.isEmpty() || under.length() > LONGEST) {
      return Optional.empty();
    }
    return decimal(over).map(n -> new Figure(0, n.whole(), Double.parseDouble(under), n.commas()));
  }

  private Figure withFraction(Figure whole) {
    if (Scanner.isFraction(scanner.peek())) {
      return withSign(whole);
    }
    int before = scanner.place();
    return mixed(whole)
        .orElseGet(
            () -> {
              scanner.backTo(before);
              return whole;
            });
  }

  /** The {@code 1/2} of {@code 7 1/2} and of {@code 7-1/2}. */
  private Optional<Figure> mixed(Figure whole) {
    if (!Scanner.isSpace(scanner.peek()) && scanner.peek() != '-') {
      return Optional.empty();
    }
    scanner.advance();
    if (Scanner.isFraction(scanner.peek())) {
      return Optional.of(withSign(whole));
    }
    String over = scanner.digits();
    return scanner.peek() == '/' && isShort(over) ? slashed(whole, over) : Optional.empty();
  }

  private Optional<Figure> slashed(Figure whole, String over) {
    scanner.advance();
    String under = scanner.digits();
    return isShort(under)
        ? Optional.of(whole.plus(Double.parseDouble(over), Double.parseDouble(under)))
        : Optional.empty();
  }

  private Figure withSign(Figure whole) {
    int index = FRACTIONS.indexOf(scanner.peek());
    scanner.advance();
    return whole.plus(EIGHTHS[index], 8);
  }

  private static boolean isShort(String digits) {
    return !digits.isEmpty() && digits.length() <= 4;
  }

  private static Optional<Figure> decimal(String written) {
    if (written.indexOf(',') >= 0) {
      return Optional.of(grouped(written));
    }
    boolean onePoint = written.indexOf('.') == written.lastIndexOf('.');
    return onePoint
        ? Optional.of(Figure.decimal(Double.parseDouble(written), Commas.NONE))
        : Optional.empty();
  }

  private static Figure grouped(String written) {
    return isThousands(written)
        ? Figure.decimal(Double.parseDouble(written.replace(",", "")), Commas.THOUSANDS)
        : Figure.decimal(0, Commas.UNCLEAR);
  }

  /** Whether commas part groups of three digits, and no group of a decimal. */
  private static boolean isThousands(String written) {
    int point = written.indexOf('.');
    String whole = point < 0 ? written : written.substring(0, point);
    String[] groups = whole.split(",", -1);
    boolean start = isLeading(groups[0]);
    boolean rest = Arrays.stream(groups).skip(1).allMatch(g -> g.length() == 3);
    boolean tail = point < 0 || written.indexOf(',', point) < 0;
    return start && rest && tail && written.indexOf('.', point + 1) < 0;
  }

  /** Whether thousands can begin with these digits: {@code ,500} and {@code 0,500} are decimals. */
  private static boolean isLeading(String digits) {
    return !digits.isEmpty() && digits.length() <= 3 && !digits.startsWith("0");
  }
}
