package clampwise.job;

import clampwise.source.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads codes with their editions where the job has them as free text, such as NEC 2020. */
public final class Editions {

  /** Years between editions of the codes that have a year in their name. */
  private static final int CYCLE_YEARS = 3;

  private static final int YEAR_DIGITS = 4;

  private static final String CENTURY = "20";

  private Editions() {}

  /** The code that a text means, if it is one of these. */
  public static <E extends Enum<E>> Optional<E> of(E[] codes, String text) {
    String word = joined(text);
    for (E code : codes) {
      if (Choice.word(code).equals(word)) {
        return Optional.of(code);
      }
    }
    return Optional.empty();
  }

  /** The code that a misspelt text most likely means; another edition is no slip. */
  public static <E extends Enum<E>> Optional<String> meant(E[] codes, String text) {
    String word = joined(text);
    List<String> known = new ArrayList<>();
    for (E code : codes) {
      known.add(Choice.word(code));
    }
    boolean right = known.contains(word) || isOtherEdition(word, known);
    return right ? Optional.empty() : Nearest.to(word, known);
  }

  private static boolean isOtherEdition(String word, List<String> known) {
    Optional<Integer> year = year(word);
    for (String one : known) {
      Optional<Integer> other = year(one);
      if (year.isPresent() && other.isPresent() && title(word).equals(title(one))) {
        return (year.get() - other.get()) % CYCLE_YEARS == 0;
      }
    }
    return false;
  }

  private static Optional<Integer> year(String word) {
    String last = word.substring(word.lastIndexOf('-') + 1);
    boolean year = last.length() == YEAR_DIGITS && last.startsWith(CENTURY);
    return year ? Words.wholeNumber(last) : Optional.empty();
  }

  private static String title(String word) {
    return word.substring(0, Math.max(0, word.lastIndexOf('-')));
  }

  /** Letters and digits as written small, whatever stands between them as one hyphen. */
  private static String joined(String text) {
    StringBuilder word = new StringBuilder();
    for (char c : text.strip().toLowerCase(Locale.ROOT).toCharArray()) {
      if (Character.isLetterOrDigit(c)) {
        word.append(c);
      } else if (!word.isEmpty() && word.charAt(word.length() - 1) != '-') {
        word.append('-');
      }
    }
    return word.toString();
  }
}
