package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;

/** Reports keys that name no wind zone, where a job says something for each zone. */
final class ZoneWords {

  private static final List<String> WORDS = List.of("field", "edge", "corner");
  private static final int LONGEST_NAME = 5;
  private static final String EXPECTED =
      "field, edge, corner or a zone of the figure such as 2e or G";

  private ZoneWords() {}

  static void check(Node.Mapping field, Lost lost, Problems problems) {
    field.mapping("allowed-spacing").ifPresent(zones -> keys(zones, problems));
    field.mapping("allowed-seam-spacing").ifPresent(zones -> keys(zones, problems));
    field
        .mapping("attach")
        .flatMap(attach -> attach.mapping("zones"))
        .ifPresent(zones -> schedule(zones, lost, problems));
  }

  /** A schedule that means another zone leaves none out. */
  private static void schedule(Node.Mapping zones, Lost lost, Problems problems) {
    int before = problems.count();
    keys(zones, problems);
    if (problems.count() > before) {
      lost.add(zones);
    }
  }

  static void claims(Node.Mapping claims, Problems problems) {
    claims.mapping("pressures").ifPresent(zones -> keys(zones, problems));
    claims.mapping("attachments-by-zone").ifPresent(zones -> keys(zones, problems));
  }

  private static void keys(Node.Mapping zones, Problems problems) {
    zones.entries().stream()
        .map(Node.Entry::key)
        .filter(key -> !isZone(key.text()))
        .forEach(key -> problems.add(unknown(key)));
  }

  /** Figures name their zones with a digit or a capital letter first. */
  private static boolean isZone(String key) {
    return WORDS.contains(key)
        || (!key.isEmpty()
            && key.length() <= LONGEST_NAME
            && !Character.isLowerCase(key.charAt(0)));
  }

  private static Problem unknown(Node.Scalar key) {
    String found = "no wind zone named " + Reading.quoted(key.text());
    return new Problem(key.at(), found, EXPECTED, Nearest.to(key.text(), WORDS));
  }
}
