package clampwise.units;

/** Prints slopes as {@code 4:12} and ratios as {@code 1:500}. */
final class RatioText {

  private RatioText() {}

  static String text(double si, Unit unit, int extra) {
    if (unit.dimension() == Dimension.NUMBER && si > 0) {
      return "1:" + QuantityPrint.trimmed(1 / si, extra);
    }
    return QuantityPrint.trimmed(Scale.fromSi(si, unit), 2 + extra) + unit.symbol();
  }
}
