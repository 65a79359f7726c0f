package clampwise.units;

/** Prints wire sizes in American wire gauge. */
final class WireText {

  private WireText() {}

  /** A gauge such as {@code 6 AWG} or {@code 1/0 AWG}; in kcmil or mm² if it is none. */
  static String text(double areaM2, int extra) {
    double gauge = Scale.awg(areaM2);
    long whole = Math.round(gauge);
    if (Math.abs(gauge - whole) > 0.01 || whole < -3) {
      double kcmil = Units.KCMIL.fromSi(areaM2);
      return Math.abs(kcmil - Math.rint(kcmil)) < 1e-6
          ? QuantityPrint.trimmed(kcmil, 0) + " kcmil"
          : QuantityPrint.trimmed(areaM2 * 1e6, 1 + extra) + " mm²";
    }
    return (whole > 0 ? String.valueOf(whole) : 1 - whole + "/0") + " AWG";
  }
}
