package clampwise.facts.layout;

import clampwise.job.Field;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import java.util.Optional;

/**
 * Gaps between the modules of a field [m]; 0 where a direction has only one module and no gap is
 * given.
 */
record Gaps(double columnM, double rowM) {

  static final double NOT_NEEDED_M = 0;

  /** Gap between columns: its own, else the gap both ways, else the one the mid clamp sets. */
  static Optional<Double> column(Field field, Optional<ModuleClamp> midClamp) {
    return first(field.columnGap(), field, midClamp);
  }

  /** Gap between rows, found the same way. */
  static Optional<Double> row(Field field, Optional<ModuleClamp> midClamp) {
    return first(field.rowGap(), field, midClamp);
  }

  private static Optional<Double> first(
      Optional<Length> own, Field field, Optional<ModuleClamp> midClamp) {
    return own.or(field::gap).or(() -> midClamp.flatMap(ModuleClamp::gap)).map(Length::m);
  }
}
