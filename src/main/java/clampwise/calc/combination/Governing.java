package clampwise.calc.combination;

/**
 * The combinations that govern.
 *
 * @param up least normal effect: most uplift, or least pressure where there is none
 * @param down largest normal effect
 * @param along largest effect down the slope
 */
public record Governing(Combined up, Combined down, Combined along) {

  /** Uplift, zero where dead load holds the part down. */
  public double uplift() {
    return Math.max(0, -up.normalUp());
  }

  /** Pressure toward the surface. */
  public double pressure() {
    return Math.max(0, down.normalDown());
  }

  /** Force down the slope. */
  public double downSlope() {
    return along.alongSlope();
  }
}
