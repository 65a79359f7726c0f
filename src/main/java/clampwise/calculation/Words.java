package clampwise.calculation;

import java.util.Arrays;
import java.util.Locale;

/** Words of inputs and the choices that they mean. */
final class Words {

  private Words() {}

  /** The choice of a word in kebab-case. */
  static <E extends Enum<E>> E choice(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** The words of all choices, in kebab-case. */
  static <E extends Enum<E>> String[] of(Class<E> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(choice -> choice.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .toArray(String[]::new);
  }

  /** Yes or no. */
  static Input yesNo(String name, String meaning) {
    return Input.word(name, meaning, "yes", "no");
  }
}
