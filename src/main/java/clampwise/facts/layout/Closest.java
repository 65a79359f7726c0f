package clampwise.facts.layout;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name nearest to one that was written. */
final class Closest {

  private Closest() {}

  /** The name with the fewest changed letters, if no more than half of them change. */
  static Optional<String> to(String written, Collection<String> known) {
    int most = Math.max(2, written.length() / 2);
    return known.stream()
        .filter(name -> Math.abs(name.length() - written.length()) <= most)
        .min(
            Comparator.comparingInt((String name) -> changes(written, name))
                .thenComparing(name -> name))
        .filter(name -> changes(written, name) <= most);
  }

  private static int changes(String written, String known) {
    String from = written.toLowerCase(Locale.ROOT);
    String to = known.toLowerCase(Locale.ROOT);
    int[] row = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      next(row, from.charAt(i - 1), i, to);
    }
    return row[to.length()];
  }

  private static void next(int[] row, char letter, int i, String to) {
    int diagonal = row[0];
    row[0] = i;
    for (int j = 1; j <= to.length(); j++) {
      int changed = diagonal + (letter == to.charAt(j - 1) ? 0 : 1);
      diagonal = row[j];
      row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
    }
  }
}
