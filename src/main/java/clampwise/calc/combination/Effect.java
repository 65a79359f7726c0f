package clampwise.calc.combination;

/**
 * What one action does to a roof surface, as pressures or as forces.
 *
 * @param normal across the surface, positive toward it
 * @param along down the slope
 */
public record Effect(double normal, double along) {

  /** No effect. */
  public static final Effect NONE = new Effect(0, 0);

  /** An effect across the surface only, such as wind. */
  public static Effect normal(double toward) {
    return new Effect(toward, 0);
  }

  /** The effect on an area, or any other multiple. */
  public Effect times(double factor) {
    return new Effect(normal * factor, along * factor);
  }
}
