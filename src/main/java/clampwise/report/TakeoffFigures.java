package clampwise.report;

import clampwise.catalogue.Limit;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Prints the numbers of a take-off in the units of its designer. */
record TakeoffFigures(boolean imperial) {

  private static final String UNKNOWN = "?";
  private static final String BY_LENGTH = "-of-a-metre";

  /** Symbol of masses. */
  String massUnit() {
    return masses().symbol();
  }

  private Unit masses() {
    return imperial ? Units.POUND : Units.KILOGRAM;
  }

  /** Mass of one, without its unit; a question mark where it is not known. */
  String massEach(Optional<Double> kg) {
    return kg.map(known -> fixed(masses().fromSi(known), 2)).orElse(UNKNOWN);
  }

  /** Mass of many, without its unit. */
  String mass(Optional<Double> kg) {
    return kg.map(known -> fixed(masses().fromSi(known), 1)).orElse(UNKNOWN);
  }

  /** A mass with its unit. */
  String massText(Optional<Double> kg) {
    return kg.map(known -> fixed(masses().fromSi(known), 0) + " " + massUnit()).orElse("not known");
  }

  /** A length in whole units. */
  String length(double m) {
    return imperial ? fixed(Unit.FOOT.fromSi(m), 0) + " ft" : fixed(m, 0) + " m";
  }

  /** What was assumed; of something that goes by its length, for one metre or foot of it. */
  String assumed(Limit limit) {
    boolean byLength = limit.key().endsWith(BY_LENGTH);
    Unit unit = assumedUnit(limit);
    double si = byLength && imperial ? limit.si() * Unit.FOOT.factor() : limit.si();
    double step = step(unit);
    double rounded = unit.equals(limit.unit()) ? si : Math.rint(si / step) * step;
    return QuantityPrint.text(rounded, unit) + (byLength ? perLength() : "");
  }

  private String perLength() {
    return imperial ? "/ft" : "/m";
  }

  /** As it was published, unless that is a length or mass of the other system. */
  private Unit assumedUnit(Limit limit) {
    Unit unit = limit.unit();
    if (unit.dimension() == Dimension.MASS) {
      return masses();
    }
    boolean own = unit.dimension() != Dimension.LENGTH || isImperial(unit) == imperial;
    if (own) {
      return unit;
    }
    if (imperial) {
      return Unit.FOOT;
    }
    return limit.si() < 1 ? Unit.MILLIMETRE : Unit.METRE;
  }

  private static boolean isImperial(Unit unit) {
    return unit.equals(Unit.FOOT) || unit.equals(Unit.INCH);
  }

  /** Nobody assumes a tenth of a millimetre. */
  private static double step(Unit unit) {
    return switch (unit.symbol()) {
      case "ft" -> Unit.INCH.factor();
      case "mm" -> unit.factor();
      default -> unit.factor() / 100;
    };
  }

  /** A share of a whole. */
  static String share(double share) {
    return QuantityPrint.trimmed(100 * share, 1) + " %";
  }

  /** Time of a crew. */
  static String hours(double seconds) {
    return fixed(Units.HOUR.fromSi(seconds), 1) + " h";
  }

  /** Time for one piece. */
  static String each(double seconds) {
    Unit unit =
        seconds >= Units.HOUR.factor()
            ? Units.HOUR
            : seconds % Units.MINUTE.factor() == 0 ? Units.MINUTE : Units.SECOND;
    return QuantityPrint.text(seconds, unit);
  }

  /** A count or a length in whole numbers. */
  static String number(double number) {
    return fixed(number, 0);
  }

  /** The one number, or both ends of a range. */
  static String range(int least, int most) {
    return least == most ? String.valueOf(least) : least + " to " + most;
  }

  private static String fixed(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
