package clampwise.source;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known key or name that a misspelt one most likely stands for. */
public final class Nearest {

  private static final int LONGEST = 60;

  /** Shorter words stand in too many others. */
  private static final int SHORTEST_HELD = 5;

  private static final List<String> ROMAN = List.of("0", "I", "II", "III", "IV", "V");

  private Nearest() {}

  /** The known word nearest to the written one, if any is near enough to be worth naming. */
  public static Optional<String> to(String written, Collection<String> known) {
    if (written.isEmpty() || written.length() > LONGEST) {
      return Optional.empty();
    }
    return roman(written).filter(known::contains).or(() -> nearest(written, known));
  }

  /** A digit written where categories have Roman numerals. */
  private static Optional<String> roman(String written) {
    char first = written.charAt(0);
    boolean digit = written.length() == 1 && first >= '0' && first < '0' + ROMAN.size();
    return digit ? Optional.of(ROMAN.get(first - '0')) : Optional.empty();
  }

  private static Optional<String> nearest(String written, Collection<String> known) {
    String folded = fold(written);
    String best = "";
    int bestDistance = Math.max(1, folded.length() / 3) + 1;
    for (String word : known) {
      int distance = distance(folded, fold(word), bestDistance);
      if (distance < bestDistance && distance < Math.max(folded.length(), fold(word).length())) {
        best = word;
        bestDistance = distance;
      }
    }
    return best.isEmpty() ? holding(folded, known) : Optional.of(best);
  }

  /** The only known word that holds the written one, or is held by it. */
  private static Optional<String> holding(String folded, Collection<String> known) {
    Optional<String> only = Optional.empty();
    for (String word : known) {
      String other = fold(word);
      boolean holds =
          Math.min(folded.length(), other.length()) >= SHORTEST_HELD
              && (folded.contains(other) || other.contains(folded));
      if (holds && only.isPresent()) {
        return Optional.empty();
      }
      only = holds ? Optional.of(word) : only;
    }
    return only;
  }

  /** Hyphens before an option make no two options alike. */
  private static String fold(String word) {
    int start = 0;
    while (start < word.length() - 1 && word.charAt(start) == '-') {
      start++;
    }
    return word.substring(start).toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /** Edits (insert, delete, replace, swap of neighbours) between two words, at most a bound. */
  static int distance(String a, String b, int bound) {
    if (Math.abs(a.length() - b.length()) >= bound) {
      return bound;
    }
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = row(a, b, i, last, beforeLast);
      beforeLast = last;
      last = row;
    }
    return Math.min(bound, last[b.length()]);
  }

  private static int[] row(String a, String b, int i, int[] last, int[] beforeLast) {
    int[] row = new int[b.length() + 1];
    row[0] = i;
    for (int j = 1; j <= b.length(); j++) {
      int replaced = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(replaced, 1 + Math.min(last[j], row[j - 1]));
      if (swapped(a, b, i, j)) {
        row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
      }
    }
    return row;
  }

  private static boolean swapped(String a, String b, int i, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
