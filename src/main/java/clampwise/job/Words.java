package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads texts, counts, yes or no, and words of fixed lists. */
final class Words {

  /** The largest count that is read: more modules, seams or rows than any roof has. */
  static final int LARGEST_COUNT = 1_000_000;

  private static final int LONGEST_COUNT = 7;

  private Words() {}

  static ValueDeserializer<Text> text() {
    return ValueDeserializer.ofScalar(
        "a text", (scalar, key, reading) -> new Text(scalar.text(), scalar.at()));
  }

  static ValueDeserializer<Count> count() {
    return ValueDeserializer.ofScalar("a whole number", Words::count);
  }

  private static @Nullable Count count(Node.Scalar scalar, String key, Reading reading) {
    Optional<Integer> number = wholeNumber(scalar.text());
    int least = Ranges.leastCount(key);
    if (number.isEmpty() || number.get() < least || number.get() > LARGEST_COUNT) {
      String expected = "a whole number from " + least + " to " + LARGEST_COUNT;
      reading.problem(scalar.at(), Reading.quoted(scalar.text()), expected);
      return null;
    }
    return new Count(number.get(), scalar.at());
  }

  static Optional<Integer> wholeNumber(String text) {
    if (text.isEmpty() || text.length() > LONGEST_COUNT) {
      return Optional.empty();
    }
    boolean digits = text.chars().allMatch(c -> c >= '0' && c <= '9');
    return digits ? Optional.of(Integer.valueOf(text)) : Optional.empty();
  }

  static ValueDeserializer<Day> day() {
    return ValueDeserializer.ofScalar("a date, such as 2026-04-14", Words::day);
  }

  private static @Nullable Day day(Node.Scalar scalar, String key, Reading reading) {
    Optional<Day> day = Day.of(scalar.text(), scalar.at());
    if (day.isEmpty()) {
      reading.problem(scalar.at(), Reading.quoted(scalar.text()), "a date, such as 2026-04-14");
    }
    return day.orElse(null);
  }

  static ValueDeserializer<Flag> flag() {
    return ValueDeserializer.ofScalar("yes or no", Words::flag);
  }

  private static @Nullable Flag flag(Node.Scalar scalar, String key, Reading reading) {
    return switch (scalar.text()) {
      case "yes", "true" -> new Flag(true, scalar.at());
      case "no", "false" -> new Flag(false, scalar.at());
      default -> {
        String found = Reading.quoted(scalar.text());
        Reading.Misspelt meant = new Reading.Misspelt(scalar.text(), List.of("yes", "no"));
        reading.unknown(scalar.at(), found, "yes or no", meant);
        yield null;
      }
    };
  }

  static <E extends Enum<E>> ValueDeserializer<Choice<E>> choice(Class<E> type) {
    E[] values = type.getEnumConstants();
    List<String> words = Arrays.stream(values).map(Choice::word).toList();
    String expected = "one of " + String.join(", ", words);
    boolean edition = Choice.Edition.class.isAssignableFrom(type);
    return ValueDeserializer.ofScalar(
        expected,
        (scalar, key, reading) -> {
          int index = words.indexOf(scalar.text());
          if (index >= 0) {
            return new Choice<>(values[index], scalar.at());
          }
          reading
              .problems()
              .add(
                  new Problem(
                      scalar.at(),
                      Reading.quoted(scalar.text()),
                      expected,
                      nearest(scalar.text(), words, edition)));
          return null;
        });
  }

  /** Another class or size is no misspelling: its digits are meant. */
  private static Optional<String> nearest(String written, List<String> words, boolean edition) {
    return Nearest.to(written, words)
        .filter(near -> edition || digits(near).isEmpty() || digits(near).equals(digits(written)));
  }

  private static String digits(String word) {
    return word.replaceAll("[^0-9]", "");
  }
}
