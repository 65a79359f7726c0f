package clampwise.facts.layout;

import clampwise.job.Named;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Looks up what a designer gave for a wind zone: under the zone's own name ({@code 2e}), its digit
 * ({@code 2}), or the trade's word for it ({@code field} is 1, {@code edge} 2, {@code corner} 3).
 */
public final class ZoneKeys {

  private static final List<String> WORDS = List.of("field", "edge", "corner");

  private ZoneKeys() {}

  /** What is given for a zone, the most exact key first. */
  public static <T> Optional<T> find(Named<T> byZone, String zone) {
    return keys(zone).flatMap(key -> byZone.find(key).stream()).findFirst();
  }

  /** All keys that mean a zone, the most exact first. */
  public static Stream<String> keys(String zone) {
    String digit = zone.substring(0, 1);
    int word = "123".indexOf(digit);
    return Stream.concat(
        Stream.of(zone, digit), word < 0 ? Stream.empty() : Stream.of(WORDS.get(word)));
  }
}
