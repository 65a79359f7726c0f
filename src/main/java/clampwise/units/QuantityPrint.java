package clampwise.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints quantities as a trade person writes them, the same in every locale. */
public final class QuantityPrint {

  private static final int MOST_EXTRA_DIGITS = 7;
  private static final double EXACT = 1e-6;

  private QuantityPrint() {}

  /** Two quantities that are compared, in texts that differ where the quantities do. */
  public record Pair(String first, String second) {}

  /** A quantity in a unit, such as {@code 31 ft 7.5 in}. */
  public static String text(double si, Unit unit) {
    return isSixteenths(si, unit) ? sixteenths(si) : text(si, unit, 0);
  }

  /** Two quantities in one unit, with more digits where the usual ones would print them alike. */
  public static Pair pair(double aSi, double bSi, Unit unit) {
    Pair shortest = inOneForm(aSi, bSi, unit);
    if (aSi == bSi || !shortest.first.equals(shortest.second)) {
      return shortest;
    }
    for (int extra = 1; extra <= MOST_EXTRA_DIGITS; extra++) {
      Pair pair = new Pair(text(aSi, unit, extra), text(bSi, unit, extra));
      if (!pair.first.equals(pair.second)) {
        return pair;
      }
    }
    return shortest;
  }

  private static Pair inOneForm(double aSi, double bSi, Unit unit) {
    boolean fractions = isFractional(aSi, unit) && isFractional(bSi, unit);
    return fractions
        ? new Pair(text(aSi, unit), text(bSi, unit))
        : new Pair(text(aSi, unit, 0), text(bSi, unit, 0));
  }

  private static String text(double si, Unit unit, int extra) {
    if (unit.symbol().equals("ft")) {
      return feet(si, extra);
    }
    if (unit.symbol().equals("AWG")) {
      return WireText.text(si, extra);
    }
    return Scale.run(unit).isPresent() ? RatioText.text(si, unit, extra) : plain(si, unit, extra);
  }

  private static String plain(double si, Unit unit, int extra) {
    double written = Scale.fromSi(si, unit);
    int small = Math.abs(written) < 1 ? 2 : 0;
    String number = trimmed(written, Decimals.of(unit) + small + extra);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }

  private static String feet(double si, int extra) {
    double inches = rounded(si / Unit.INCH.factor(), 2 + extra);
    long feet = (long) (Math.abs(inches) / 12);
    double rest = Math.abs(inches) - 12 * feet;
    String sign = inches < 0 ? "-" : "";
    String restText = trimmed(rest, 2 + extra) + " in";
    if (feet == 0) {
      return inches == 0 ? "0 ft" : sign + restText;
    }
    return sign + feet + " ft" + (restText.equals("0 in") ? "" : " " + restText);
  }

  private static boolean isFractional(double si, Unit unit) {
    return isSixteenths(si, unit) || isMultiple(si / Unit.INCH.factor());
  }

  /** Whether a length in inches is a fraction that a tape shows. */
  private static boolean isSixteenths(double si, Unit unit) {
    double inches = si / Unit.INCH.factor();
    return unit.symbol().equals("in") && isMultiple(inches * 16) && !isMultiple(inches);
  }

  private static boolean isMultiple(double x) {
    return Math.abs(x - Math.rint(x)) < EXACT;
  }

  private static String sixteenths(double si) {
    long count = Math.round(Math.abs(si) / Unit.INCH.factor() * 16);
    long under = 16 / greatestCommonDivisor(count % 16, 16);
    String fraction = count % 16 * under / 16 + "/" + under + " in";
    String sign = si < 0 ? "-" : "";
    return sign + (count < 16 ? fraction : count / 16 + " " + fraction);
  }

  private static long greatestCommonDivisor(long a, long b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }

  private static double rounded(double x, int decimals) {
    return BigDecimal.valueOf(x).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  /** A number with so many significant digits, without trailing zeros and without an exponent. */
  public static String significant(double x, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(x).round(new MathContext(digits, RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number with at most so many decimals, without trailing zeros. */
  public static String trimmed(double x, int decimals) {
    return QuickDecimals.trimmed(x, decimals).orElseGet(() -> exactly(x, decimals));
  }

  static String exactly(double x, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(x).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
