package clampwise.finding;

import clampwise.units.Unit;

/**
 * A measured number held against its limit, both in SI.
 *
 * @param measuredSi what the job gives
 * @param limitSi what it is held against
 * @param unit the unit the designer wrote, for printing both
 */
public record Comparison(double measuredSi, double limitSi, Unit unit) {

  /** Measured over limit; not a number when the limit is zero. */
  public double ratio() {
    return limitSi == 0 ? Double.NaN : measuredSi / limitSi;
  }
}
