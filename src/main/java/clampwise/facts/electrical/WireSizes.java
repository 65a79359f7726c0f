package clampwise.facts.electrical;

import clampwise.calc.trail.Table;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;

/** Sizes of conductors as one buys them. */
final class WireSizes {

  /** The areas of catalogues are rounded: 13.3 mm² is 6 AWG. */
  private static final double ROUNDED = 5e-3;

  private WireSizes() {}

  /** A size that is a limit's but for the rounding of catalogues counts as the limit. */
  static double snapped(double m2, double limitM2) {
    return Math.abs(m2 - limitM2) <= ROUNDED * limitM2 ? limitM2 : m2;
  }

  /** The next size of the table of grounding conductors, as printed; metric sizes as they are. */
  static String next(Table table, double leastM2, Unit unit) {
    double size =
        table.rows().stream()
            .mapToDouble(row -> row.number("copper"))
            .filter(m2 -> m2 >= leastM2 * (1 - ROUNDED))
            .min()
            .orElse(leastM2);
    boolean american = unit.equals(Units.AWG) || unit.equals(Units.KCMIL);
    return american
        ? QuantityPrint.text(size, Units.AWG)
        : QuantityPrint.text(leastM2, Units.SQUARE_MILLIMETRE);
  }
}
