package clampwise.calc.statics;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * A weight on a slope, in its parts across the roof and down the slope.
 *
 * @param normalN toward the roof [N]
 * @param slopeN down the slope [N]
 */
public record OnSlope(double normalN, double slopeN) {

  /**
   * Parts of a weight: W cos θ across the roof, W sin θ down the slope.
   *
   * @param weightN weight [N]
   * @param slopeRad slope of the roof [rad]
   */
  public static OnSlope of(double weightN, double slopeRad) {
    return new OnSlope(weightN * Math.cos(slopeRad), weightN * Math.sin(slopeRad));
  }

  /**
   * Snow on a module: a load on the plan area, s L W cos θ, in its parts.
   *
   * @param snowPa snow load on the horizontal projection [Pa]
   * @param areaM2 area of the module [m²]
   * @param slopeRad slope of the roof [rad]
   */
  public static OnSlope ofSnow(double snowPa, double areaM2, double slopeRad) {
    return of(snowPa * areaM2 * Math.cos(slopeRad), slopeRad);
  }

  /**
   * The parts of a weight, written into the work.
   *
   * @param weight a force; the parts take its symbol with {@code _n} and {@code _s}
   */
  public static OnSlope show(Term weight, double slopeRad, Work work) {
    OnSlope parts = of(weight.si(), slopeRad);
    Term slope = Term.angle("theta", "slope of the roof", slopeRad);
    String symbol = weight.symbol();
    Term normal = Term.force(symbol + "_n", weight.meaning() + ", across the roof", parts.normalN);
    Term down = Term.force(symbol + "_s", weight.meaning() + ", down the slope", parts.slopeN);
    work.write(normal, symbol + "*cos(theta)", Source.STATICS, weight, slope);
    work.write(down, symbol + "*sin(theta)", Source.STATICS, weight, slope);
    return parts;
  }

  /** Weight of the snow on a module, written into the work [N]. */
  public static Term showSnow(double snowPa, double areaM2, double slopeRad, Work work) {
    Term weight = Term.force("S", "snow", snowPa * areaM2 * Math.cos(slopeRad));
    work.write(
        weight,
        "s*A*cos(theta)",
        Source.STATICS,
        Term.pressure("s", "snow load on the plan area", snowPa),
        Term.area("A", "area of the module", areaM2),
        Term.angle("theta", "slope of the roof", slopeRad));
    return weight;
  }
}
