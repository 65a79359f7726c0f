package clampwise.facts.layout;

import clampwise.job.Named;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Looks up what a designer gave for a wind zone: under the zone's own name ({@code 2e}), its first
 * character ({@code 2}), or the trade's word for it: {@code field} is 1 of ASCE 7 and H and I of EN
 * 1991-1-4, {@code edge} 2, G and J, {@code corner} 3 and F.
 */
public final class ZoneKeys {

  private static final Map<Character, String> WORDS =
      Map.of(
          '1', "field", 'H', "field", 'I', "field", '2', "edge", 'G', "edge", 'J', "edge", '3',
          "corner", 'F', "corner");

  private ZoneKeys() {}

  /** What is given for a zone, the most exact key first. */
  public static <T> Optional<T> find(Named<T> byZone, String zone) {
    return keys(zone).flatMap(key -> byZone.find(key).stream()).findFirst();
  }

  /** All keys that mean a zone, the most exact first; none for a place outside all zones. */
  public static Stream<String> keys(String zone) {
    if (zone.isEmpty()) {
      return Stream.empty();
    }
    return Stream.concat(
        Stream.of(zone, zone.substring(0, 1)),
        Optional.ofNullable(WORDS.get(zone.charAt(0))).stream());
  }
}
