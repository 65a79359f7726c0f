package clampwise.job;

import clampwise.source.Span;
import java.util.Locale;

/**
 * One word of a fixed list.
 *
 * @param value the word; {@code DOUBLE_LOCK} is written {@code double-lock}
 */
public record Choice<E extends Enum<E>>(E value, Span at) implements Written {

  /** Words that are not written as their constants are named. */
  public interface Spelt {

    /** The word as a designer writes it. */
    String word();
  }

  /** Words whose numbers tell editions apart, of which the nearest is worth naming. */
  public interface Edition {}

  /** The word as a designer writes it; classes such as {@code C3} keep their capitals. */
  public static String word(Enum<?> value) {
    if (value instanceof Spelt spelt) {
      return spelt.word();
    }
    String name = value.name();
    return name.length() <= 2 ? name : name.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public String toString() {
    return word(value);
  }
}
