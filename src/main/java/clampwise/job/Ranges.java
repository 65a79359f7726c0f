package clampwise.job;

import java.util.Set;

/** Which keys may not be zero or empty: a pitch of nothing would never end. */
final class Ranges {

  /** The shortest pitch or size that is read [m]. */
  static final double SHORTEST_M = 0.01;

  private static final Set<String> POSITIVE_LENGTHS =
      Set.of(
          "pitch",
          "spacing",
          "support-spacing",
          "length",
          "width",
          "diameter",
          "over",
          "size",
          "span",
          "along",
          "up",
          "diagonal",
          "diagonals");
  private static final Set<String> POSITIVE_COUNTS =
      Set.of(
          "rows",
          "columns",
          "every",
          "per-edge",
          "from",
          "row",
          "zones",
          "count",
          "clamps-at-least",
          "in-series",
          "in-parallel",
          "together",
          "every-months");
  private static final Set<String> MAY_BE_EMPTY =
      Set.of(
          "omit",
          "assumed",
          "minor-ribs",
          "end-laps",
          "expansion-joints",
          "treated-wood",
          "jumpers",
          "lugs",
          "listed-with",
          "shown",
          "shows",
          "reviews",
          "photos",
          "steps",
          "tightens",
          "lines");

  private Ranges() {}

  /** Whether lengths under this key have to be longer than nothing. */
  static boolean isPositive(String key) {
    return POSITIVE_LENGTHS.contains(key);
  }

  /** Whether an empty list under this key says something: that there is none of it. */
  static boolean mayBeEmpty(String key) {
    return MAY_BE_EMPTY.contains(key);
  }

  /** The smallest count under this key. */
  static int leastCount(String key) {
    return POSITIVE_COUNTS.contains(key) ? 1 : 0;
  }
}
