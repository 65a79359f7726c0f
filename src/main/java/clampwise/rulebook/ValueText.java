package clampwise.rulebook;

import clampwise.job.Choice;
import clampwise.job.Quantity;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/** Prints the value of a component. */
final class ValueText {
  private ValueText() {}

  /** The value in print; empty if there is nothing to print. */
  static Optional<String> of(String name, Object value, Unit shown) {
    return Optional.of(text(name, value, shown)).filter(text -> !text.isEmpty());
  }

  private static String text(String name, Object value, Unit shown) {
    if (value instanceof Double number) {
      return QuantityPrint.text(number, Suffix.unit(name, shown));
    }
    if (value instanceof Collection<?> values) {
      return values.stream().map(item -> text(name, item, shown)).collect(Collectors.joining(", "));
    }
    return plain(value);
  }

  private static String plain(Object value) {
    if (value instanceof Quantity quantity) {
      return QuantityPrint.text(quantity.si(), quantity.unit());
    }
    if (value instanceof Enum<?> word) {
      return Choice.word(word);
    }
    if (value instanceof Boolean flag) {
      return flag ? "yes" : "no";
    }
    return value.toString();
  }
}
