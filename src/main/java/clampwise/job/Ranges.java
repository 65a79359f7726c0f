package clampwise.job;

import java.util.Set;

/** Which keys may not be zero: a pitch of nothing would never end. */
final class Ranges {

  /** The shortest pitch or size that is read [m]. */
  static final double SHORTEST_M = 0.01;

  private static final Set<String> POSITIVE_LENGTHS =
      Set.of("pitch", "spacing", "length", "width", "diameter", "over", "size");
  private static final Set<String> POSITIVE_COUNTS =
      Set.of("rows", "columns", "every", "per-edge", "from", "row", "zones");

  private Ranges() {}

  /** Whether lengths under this key have to be longer than nothing. */
  static boolean isPositive(String key) {
    return POSITIVE_LENGTHS.contains(key);
  }

  /** The smallest count under this key. */
  static int leastCount(String key) {
    return POSITIVE_COUNTS.contains(key) ? 1 : 0;
  }
}
