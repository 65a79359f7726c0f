package clampwise.calculation;

import clampwise.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * A value that a calculation asks for.
 *
 * @param name its key, in trade words, such as {@code wind-speed}
 * @param meaning what it is, in a few words
 * @param kind a quantity, several quantities or one of some words
 * @param unset text that stands when it is left out; none if it must be given, an empty text if
 *     nothing stands in for it
 */
public record Input(String name, String meaning, Kind kind, Optional<String> unset) {

  /** What may be written for an input. */
  public sealed interface Kind {}

  /** A quantity from {@code least} to {@code most} [SI], both included. */
  public record Quantity(Dimension dimension, double least, double most) implements Kind {}

  /** Quantities separated by commas, at least one. */
  public record Quantities(Dimension dimension, double least, double most) implements Kind {}

  /** One of these words. */
  public record Word(List<String> words) implements Kind {}

  /** The same input with a text that stands when it is left out. */
  public Input unless(String text) {
    return new Input(name, meaning, kind, Optional.of(text));
  }

  /** The same input, which may be left out without anything standing in for it. */
  public Input orNothing() {
    return unless("");
  }

  /** A quantity that must be given. */
  public static Input of(String name, String meaning, Dimension dimension, Double... range) {
    double least = range.length > 0 ? range[0] : -Double.MAX_VALUE;
    double most = range.length > 1 ? range[1] : Double.MAX_VALUE;
    return new Input(name, meaning, new Quantity(dimension, least, most), Optional.empty());
  }

  /** Several quantities that must be given. */
  public static Input list(String name, String meaning, Dimension dimension) {
    Quantities kind = new Quantities(dimension, -Double.MAX_VALUE, Double.MAX_VALUE);
    return new Input(name, meaning, kind, Optional.empty());
  }

  /** One of some words. */
  public static Input word(String name, String meaning, String... words) {
    return new Input(name, meaning, new Word(List.of(words)), Optional.empty());
  }
}
