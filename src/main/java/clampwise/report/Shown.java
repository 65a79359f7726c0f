package clampwise.report;

import clampwise.finding.Comparison;
import clampwise.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** Compared numbers in the unit the designer wrote. */
final class Shown {

  private static final MathContext DIGITS = new MathContext(4);

  private Shown() {}

  static String measured(Comparison numbers) {
    return of(numbers.measuredSi(), numbers.unit());
  }

  static String limit(Comparison numbers) {
    return of(numbers.limitSi(), numbers.unit());
  }

  private static String of(double si, Unit unit) {
    BigDecimal number = new BigDecimal(unit.fromSi(si)).round(DIGITS).stripTrailingZeros();
    return (number.toPlainString() + " " + unit.symbol()).strip();
  }
}
