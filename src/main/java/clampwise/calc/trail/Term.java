package clampwise.calc.trail;

import clampwise.units.Dimension;

/**
 * A number with its name, as it stands in a line of shown work.
 *
 * @param symbol symbol in the formula: letters, digits and underscores, such as {@code q_h}
 * @param meaning what it is, in a few words
 * @param si value [SI]
 * @param dimension what it measures
 */
public record Term(String symbol, String meaning, double si, Dimension dimension) {

  /** A number without a unit. */
  public static Term number(String symbol, String meaning, double value) {
    return new Term(symbol, meaning, value, Dimension.NUMBER);
  }

  /** A length [m]. */
  public static Term length(String symbol, String meaning, double lengthM) {
    return new Term(symbol, meaning, lengthM, Dimension.LENGTH);
  }

  /** An area [m²]. */
  public static Term area(String symbol, String meaning, double areaM2) {
    return new Term(symbol, meaning, areaM2, Dimension.AREA);
  }

  /** An angle [rad]. */
  public static Term angle(String symbol, String meaning, double angleRad) {
    return new Term(symbol, meaning, angleRad, Dimension.ANGLE);
  }

  /** A pressure [Pa]. */
  public static Term pressure(String symbol, String meaning, double pressurePa) {
    return new Term(symbol, meaning, pressurePa, Dimension.PRESSURE);
  }

  /** A weight by volume [N/m³]. */
  public static Term unitWeight(String symbol, String meaning, double unitWeightNm3) {
    return new Term(symbol, meaning, unitWeightNm3, Dimension.UNIT_WEIGHT);
  }

  /** A load by length [N/m]. */
  public static Term lineLoad(String symbol, String meaning, double lineLoadNm) {
    return new Term(symbol, meaning, lineLoadNm, Dimension.LINE_LOAD);
  }

  /** A speed [m/s]. */
  public static Term speed(String symbol, String meaning, double speedMs) {
    return new Term(symbol, meaning, speedMs, Dimension.SPEED);
  }

  /** A force [N]. */
  public static Term force(String symbol, String meaning, double forceN) {
    return new Term(symbol, meaning, forceN, Dimension.FORCE);
  }

  /** A moment [N m]. */
  public static Term moment(String symbol, String meaning, double momentNm) {
    return new Term(symbol, meaning, momentNm, Dimension.TORQUE);
  }
}
