package clampwise.calc.combination;

/**
 * The effect of one combination, in the unit of its actions.
 *
 * @param combination the combination
 * @param normalUp across the surface with wind away from it; negative is uplift
 * @param normalDown across the surface with wind toward it; positive is pressure
 * @param alongSlope down the slope
 */
public record Combined(
    Combination combination, double normalUp, double normalDown, double alongSlope) {

  /** Name of the combination. */
  public String name() {
    return combination.name();
  }
}
