package clampwise.calculation;

import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityPrint;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import java.util.Optional;

/** What may be written for an input, in words: for help, documentation and messages. */
public final class InputText {

  private InputText() {}

  /**
   * What is expected, with an example and the range: {@code a length such as ..., at least 0 m}.
   */
  public static String expected(Input input) {
    if (input.kind() instanceof Input.Word word) {
      return "one of " + String.join(", ", word.words());
    }
    if (input.kind() instanceof Input.Quantities list) {
      String one = example(list.dimension()) + range(list.dimension(), list.least(), list.most());
      return "one or more, separated by commas, each " + one;
    }
    Input.Quantity one = (Input.Quantity) input.kind();
    return example(one.dimension()) + range(one.dimension(), one.least(), one.most());
  }

  private static String example(Dimension dimension) {
    return ((Parsed.Fault) QuantityText.parse("", dimension, Optional.empty())).expected();
  }

  /** The range after a comma; nothing if there is none. */
  static String range(Dimension dimension, double least, double most) {
    boolean from = least > -Double.MAX_VALUE;
    boolean to = most < Double.MAX_VALUE;
    if (from && to) {
      return ", from " + text(least, dimension) + " to " + text(most, dimension);
    }
    return from
        ? ", at least " + text(least, dimension)
        : to ? ", at most " + text(most, dimension) : "";
  }

  private static String text(double si, Dimension dimension) {
    Unit unit = clampwise.calc.trail.Measure.METRIC.of(dimension);
    return QuantityPrint.text(si, unit);
  }
}
