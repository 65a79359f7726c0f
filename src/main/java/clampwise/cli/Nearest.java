package clampwise.cli;

import java.util.Collection;
import java.util.Optional;

/** The known word nearest to one that is not known. */
final class Nearest {

  private Nearest() {}

  /** The word with the fewest letters to change, if not more than about a third of them differ. */
  static Optional<String> to(String wrong, Collection<String> known) {
    int fewest = Math.max(2, wrong.length() / 3) + 1;
    Optional<String> nearest = Optional.empty();
    for (String word : known) {
      int changes = changes(wrong, word);
      if (changes < fewest) {
        fewest = changes;
        nearest = Optional.of(word);
      }
    }
    return nearest;
  }

  /** Letters to insert, drop or replace (Levenshtein). */
  private static int changes(String from, String to) {
    int[] row = new int[to.length() + 1];
    java.util.Arrays.setAll(row, i -> i);
    for (int i = 1; i <= from.length(); i++) {
      row = nextRow(row, from.charAt(i - 1), to);
    }
    return row[to.length()];
  }

  private static int[] nextRow(int[] above, char letter, String to) {
    int[] row = new int[above.length];
    row[0] = above[0] + 1;
    for (int j = 1; j < row.length; j++) {
      int replaced = above[j - 1] + (letter == to.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
    }
    return row;
  }
}
