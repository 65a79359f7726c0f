package clampwise.calc.trail;

import clampwise.units.Dimension;
import clampwise.units.Unit;
import clampwise.units.Units;

/**
 * The units in which shown work is printed. Each set is coherent: a pressure times an area is a
 * force in the same set, so a formula without constants holds in both.
 */
public enum Measure {
  /** Metre, newton, pascal. */
  METRIC,
  /** Foot, pound-force, pound per square foot. */
  IMPERIAL;

  /** The unit of a dimension. */
  public Unit of(Dimension dimension) {
    boolean metric = this == METRIC;
    return switch (dimension) {
      case LENGTH -> metric ? Unit.METRE : Unit.FOOT;
      case ANGLE -> Units.DEGREE;
      case AREA -> metric ? Units.SQUARE_METRE : Units.SQUARE_FOOT;
      case MASS -> metric ? Units.KILOGRAM : Units.POUND;
      case FORCE -> metric ? Units.NEWTON : Units.POUND_FORCE;
      case PRESSURE -> metric ? Units.PASCAL : Units.PSF;
      case LINE_LOAD -> metric ? Units.NEWTON_PER_METRE : Units.PLF;
      case UNIT_WEIGHT -> metric ? Units.NEWTON_PER_CUBIC_METRE : Units.PCF;
      case TORQUE -> metric ? Units.NEWTON_METRE : Units.FOOT_POUND;
      case SPEED -> metric ? Units.METRE_PER_SECOND : Units.MPH;
      case TEMPERATURE -> metric ? Units.CELSIUS : Units.FAHRENHEIT;
      case VOLTAGE -> Units.VOLT;
      case CURRENT -> Units.AMPERE;
      case DURATION -> Units.MINUTE;
      case COATING -> Units.MICROMETRE;
      case RESISTANCE -> Units.OHM;
      case TEMPERATURE_RATE -> Units.PERCENT_PER_DEGREE;
      case WIRE_SIZE -> metric ? Units.SQUARE_MILLIMETRE : Units.KCMIL;
      case NUMBER -> Unit.NUMBER;
    };
  }

  /** A value in this set's unit. */
  public double value(Term term) {
    return of(term.dimension()).fromSi(term.si());
  }
}
