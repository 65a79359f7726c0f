package clampwise.calc.combination;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Vertical loads across a slope and down it. Plain mechanics, no source needed. */
public final class SlopeComponents {

  private SlopeComponents() {}

  /**
   * A load on the sloped area, such as dead load: D cos θ across, D sin θ down the slope.
   *
   * @param load vertical load by sloped area [Pa], or a weight [N]
   * @param slopeRad slope [rad]
   * @return effect by sloped area [Pa], or on the part [N]
   */
  public static Effect onSlope(double load, double slopeRad) {
    return new Effect(load * Math.cos(slopeRad), load * Math.sin(slopeRad));
  }

  /**
   * A load on the plan area, such as snow, roof live load or rain: S cos² θ across, S cos θ sin θ
   * down the slope, by sloped area.
   *
   * @param planPa vertical load on the horizontal projection [Pa]
   * @param slopeRad slope [rad]
   * @return effect by sloped area [Pa]
   */
  public static Effect onPlan(double planPa, double slopeRad) {
    return onSlope(planPa * Math.cos(slopeRad), slopeRad);
  }

  /**
   * The same as {@link #onSlope}, with its lines.
   *
   * @param load vertical load by sloped area [Pa], or a weight [N]
   * @param slopeRad slope [rad]
   * @param work takes the lines
   * @return effect by sloped area [Pa], or on the part [N]
   */
  public static Effect onSlope(Term load, double slopeRad, Work work) {
    return write(onSlope(load.si(), slopeRad), load, "", slopeRad, work);
  }

  /**
   * The same as {@link #onPlan}, with its lines.
   *
   * @param load vertical load on the horizontal projection [Pa]
   * @param slopeRad slope [rad]
   * @param work takes the lines
   * @return effect by sloped area [Pa]
   */
  public static Effect onPlan(Term load, double slopeRad, Work work) {
    return write(onPlan(load.si(), slopeRad), load, "*cos(theta)", slopeRad, work);
  }

  private static Effect write(Effect effect, Term load, String plan, double slopeRad, Work work) {
    String symbol = load.symbol();
    Term slope = Term.angle("theta", "slope", slopeRad);
    String across = load.meaning() + ", across the surface";
    String down = load.meaning() + ", down the slope";
    work.write(
        new Term(symbol + "_n", across, effect.normal(), load.dimension()),
        symbol + "*cos(theta)" + plan,
        Source.STATICS,
        load,
        slope);
    work.write(
        new Term(symbol + "_s", down, effect.along(), load.dimension()),
        symbol + "*sin(theta)" + plan,
        Source.STATICS,
        load,
        slope);
    return effect;
  }
}
