package clampwise.calculation;

import clampwise.catalogue.Limit;
import clampwise.units.QuantityPrint;

/** Values of the shared data as texts that stand where an input is left out. */
final class Plain {

  private static final int DECIMALS = 6;

  private Plain() {}

  static String number(double value) {
    return QuantityPrint.trimmed(value, DECIMALS);
  }

  static String text(Limit limit) {
    return QuantityPrint.text(limit.si(), limit.unit());
  }
}
