package clampwise.units;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/** Spellings of units: which are the same, and which are near. */
final class Spelling {

  private static final String DROPPED = " \t.-·⋅*,\u00a0\u2009\u202f";

  private Spelling() {}

  /** A spelling without case, spaces, hyphens and typographic variants. */
  static String normal(String spelling) {
    StringBuilder normal = new StringBuilder(spelling.length());
    for (int i = 0; i < spelling.length(); i++) {
      char c = plain(spelling.charAt(i));
      if (DROPPED.indexOf(c) < 0) {
        normal.append(c);
      }
    }
    return normal.toString();
  }

  private static char plain(char c) {
    return switch (c) {
      case '²' -> '2';
      case 'º', '˚' -> '°';
      case '″', '”', '“' -> '"';
      case '′', '’', '‘' -> '\'';
      default -> Character.toLowerCase(c);
    };
  }

  /** The unit whose spelling is nearest to an unknown one, if any is near enough. */
  static Optional<Unit> nearest(String spelling, Map<String, Unit> known) {
    String normal = normal(spelling);
    int most = normal.length() <= 2 ? 1 : 2;
    return known.keySet().stream()
        .filter(k -> distance(k, normal) <= most)
        .filter(k -> distance(k, normal) < Math.max(k.length(), normal.length()))
        .min(Comparator.comparingInt(k -> 10 * distance(k, normal) + lengths(k, normal)))
        .map(known::get);
  }

  private static int lengths(String a, String b) {
    return Math.abs(a.length() - b.length());
  }

  /** Letters to add, drop or change to make one word of the other; any swaps count as one. */
  static int distance(String a, String b) {
    if (!a.equals(b) && Arrays.equals(a.chars().sorted().toArray(), b.chars().sorted().toArray())) {
      return 1;
    }
    return edits(a, b);
  }

  private static int edits(String a, String b) {
    int[] row = new int[b.length() + 1];
    Arrays.setAll(row, i -> i);
    for (int i = 1; i <= a.length(); i++) {
      nextRow(row, a.charAt(i - 1), b);
    }
    return row[b.length()];
  }

  private static void nextRow(int[] row, char c, String b) {
    int diagonal = row[0]++;
    for (int j = 1; j <= b.length(); j++) {
      int change = diagonal + (c == b.charAt(j - 1) ? 0 : 1);
      diagonal = row[j];
      row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
    }
  }
}
