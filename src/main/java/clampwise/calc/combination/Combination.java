package clampwise.calc.combination;

import clampwise.calc.trail.Source;

/**
 * A load combination.
 *
 * @param name its factors and actions, such as {@code 0.6 D + 0.6 W}
 * @param source where it comes from
 * @param factors the factor of each action
 */
public record Combination(String name, Source source, Factors factors) {

  /**
   * One factor for each action.
   *
   * @param dead dead load
   * @param live live load
   * @param roofLive live load of the roof
   * @param snow snow
   * @param rain rain
   * @param wind wind, toward or away from the surface
   */
  public record Factors(
      double dead, double live, double roofLive, double snow, double rain, double wind) {

    /** The same with another factor of snow. */
    public Factors withSnow(double factor) {
      return new Factors(dead, live, roofLive, factor, rain, wind);
    }
  }

  /** The combined effect with wind away from the surface and toward it; wind has no part along. */
  public Combined of(Actions actions) {
    Effect still = withoutWind(actions);
    Effect up = actions.windUp().times(factors.wind());
    Effect down = actions.windDown().times(factors.wind());
    return new Combined(
        this, still.normal() + up.normal(), still.normal() + down.normal(), still.along());
  }

  private Effect withoutWind(Actions actions) {
    return new Effect(
        factors.dead() * actions.dead().normal()
            + factors.live() * actions.live().normal()
            + factors.roofLive() * actions.roofLive().normal()
            + factors.snow() * actions.snow().normal()
            + factors.rain() * actions.rain().normal(),
        factors.dead() * actions.dead().along()
            + factors.live() * actions.live().along()
            + factors.roofLive() * actions.roofLive().along()
            + factors.snow() * actions.snow().along()
            + factors.rain() * actions.rain().along());
  }
}
