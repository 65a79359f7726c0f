package clampwise.source;

import java.util.List;
import java.util.Locale;

/** Puts a or an before a word, by how it is spoken. */
public final class Article {

  private static final String VOWELS = "aeiou";

  /** Capitals whose names begin with a vowel, as in an SC-A. */
  private static final String SPOKEN_WITH_VOWEL = "AEFHILMNORSX";

  /** Words that begin with a vowel and are spoken with a consonant. */
  private static final List<String> AS_CONSONANT =
      List.of("uni", "use", "usu", "util", "eur", "one", "once");

  private static final List<String> AS_VOWEL = List.of("hour", "honest");

  private Article() {}

  /** The word with its article, such as an end clamp, a mid clamp or an 8 mm bolt. */
  public static String with(String word) {
    return of(word) + " " + word;
  }

  /** The article that goes before a word. */
  public static String of(String word) {
    return isVowel(word) ? "an" : "a";
  }

  private static boolean isVowel(String word) {
    if (word.isEmpty()) {
      return false;
    }
    char first = word.charAt(0);
    if (Character.isDigit(first)) {
      return isNumberWithVowel(word);
    }
    if (isSpelt(word)) {
      return SPOKEN_WITH_VOWEL.indexOf(first) >= 0;
    }
    String small = word.toLowerCase(Locale.ROOT);
    boolean vowel = VOWELS.indexOf(small.charAt(0)) >= 0;
    return vowel ? !begins(small, AS_CONSONANT) : begins(small, AS_VOWEL);
  }

  /** Eight, eighty, eighteen and eleven. */
  private static boolean isNumberWithVowel(String word) {
    int end = 0;
    while (end < word.length() && Character.isDigit(word.charAt(end))) {
      end++;
    }
    String number = word.substring(0, end);
    return number.startsWith("8") || number.equals("11") || number.equals("18");
  }

  /** Whether a name such as MC-30 is spoken letter by letter. */
  private static boolean isSpelt(String word) {
    return Character.isUpperCase(word.charAt(0))
        && (word.length() == 1 || !Character.isLowerCase(word.charAt(1)));
  }

  private static boolean begins(String word, List<String> starts) {
    for (String start : starts) {
      if (word.startsWith(start)) {
        return true;
      }
    }
    return false;
  }
}
