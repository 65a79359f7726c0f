package clampwise.rulebook;

import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import java.util.Optional;

/** A limit that an own rule writes down as a quantity, such as {@code 20 mm}. */
public final class WrittenLimit {

  private WrittenLimit() {}

  /**
   * Its value in SI; empty if it is no quantity of that kind.
   *
   * @param unit unit of what is held against it
   */
  static Optional<Double> si(String text, Unit unit) {
    Parsed read = QuantityText.parse(text, unit.dimension(), Optional.empty());
    return read instanceof Parsed.Value value ? Optional.of(value.si()) : Optional.empty();
  }

  /** What is wrong with it as the limit of a component; empty if nothing is. */
  public static Optional<Parsed.Fault> fault(String text, String component) {
    Unit unit = Suffix.unit(component, Unit.NUMBER);
    Parsed read = QuantityText.parse(text, unit.dimension(), Optional.empty());
    return read instanceof Parsed.Fault fault ? Optional.of(fault) : Optional.empty();
  }
}
