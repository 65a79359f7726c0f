package clampwise.calc.combination;

/**
 * The actions on a part of a roof, each as its characteristic or nominal effect.
 *
 * @param dead dead load
 * @param live live load
 * @param roofLive live load of the roof
 * @param snow snow
 * @param rain rain
 * @param windDown wind toward the surface
 * @param windUp wind away from the surface
 */
public record Actions(
    Effect dead,
    Effect live,
    Effect roofLive,
    Effect snow,
    Effect rain,
    Effect windDown,
    Effect windUp) {

  /** Dead load alone. */
  public static Actions of(Effect dead) {
    return new Actions(
        dead, Effect.NONE, Effect.NONE, Effect.NONE, Effect.NONE, Effect.NONE, Effect.NONE);
  }

  /** The same with snow. */
  public Actions withSnow(Effect added) {
    return new Actions(dead, live, roofLive, added, rain, windDown, windUp);
  }

  /** The same with live loads of floor and roof. */
  public Actions withLive(Effect floor, Effect roof) {
    return new Actions(dead, floor, roof, snow, rain, windDown, windUp);
  }

  /** The same with rain. */
  public Actions withRain(Effect added) {
    return new Actions(dead, live, roofLive, snow, added, windDown, windUp);
  }

  /**
   * The same with wind across the surface. A direction that does not occur is zero.
   *
   * @param toward positive, toward the surface
   * @param away negative, away from it
   */
  public Actions withWind(double toward, double away) {
    Effect down = Effect.normal(Math.max(0, toward));
    Effect up = Effect.normal(Math.min(0, away));
    return new Actions(dead, live, roofLive, snow, rain, down, up);
  }

  /** The same on an area, or any other multiple. */
  public Actions times(double factor) {
    return new Actions(
        dead.times(factor),
        live.times(factor),
        roofLive.times(factor),
        snow.times(factor),
        rain.times(factor),
        windDown.times(factor),
        windUp.times(factor));
  }
}
