package clampwise.calc.trail;

import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Writes formulas whose constants hold in certain units only, so that they also hold for the values
 * printed in other units: a length of the code in feet is {@code (l_u/0.3048)} where metres are
 * printed.
 *
 * @param measure the units in which the work is printed
 * @param read whether somebody reads the formulas; the factors between units are left out otherwise
 */
public record Formulas(Measure measure, boolean read) {

  private static final MathContext DIGITS = new MathContext(10);

  /** Numbers with few decimals are printed the quick way; they look the same either way. */
  private static final double MOST_EVERYDAY = 1e4;

  private static final double MILLION = 1e6;
  private static final double SAME = 1e-11;

  private static final String GAP = "%s";

  /** The formulas of this work. */
  public static Formulas of(Work work) {
    return new Formulas(work.measure(), work.isRead());
  }

  /** A printed symbol, turned into the unit that the formula of the code asks for. */
  public String in(Unit unit, String symbol) {
    double factor = measure.of(unit.dimension()).factor() / unit.factor();
    return !read || factor == 1 ? symbol : "(" + symbol + times(factor) + ")";
  }

  /** An expression that gives this unit, turned into the printed unit. */
  public String out(Unit unit, String expression) {
    double factor = unit.factor() / measure.of(unit.dimension()).factor();
    return !read || factor == 1 ? expression : "(" + expression + ")" + times(factor);
  }

  /** A formula in which each {@code %s} is replaced by the next part. */
  public static String filled(String formula, String... parts) {
    StringBuilder filled = new StringBuilder();
    int from = 0;
    for (String part : parts) {
      int gap = formula.indexOf(GAP, from);
      filled.append(formula, from, gap).append(part);
      from = gap + GAP.length();
    }
    return filled.append(formula, from, formula.length()).toString();
  }

  /** A number of a code as one would key it in. */
  public static String number(double value) {
    double millionths = value * MILLION;
    double off = Math.abs(millionths - Math.rint(millionths));
    boolean everyday = Math.abs(value) < MOST_EVERYDAY && off <= SAME * Math.abs(millionths);
    return everyday ? QuantityPrint.trimmed(value, 6) : exactly(value);
  }

  static String exactly(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /** A factor or its inverse, whichever is the shorter number. */
  private static String times(double factor) {
    String direct = number(factor);
    String inverse = number(1 / factor);
    boolean isDirect = direct.length() < inverse.length();
    return isDirect ? "*" + direct : "/" + inverse;
  }
}
