package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import java.util.ArrayList;
import java.util.List;

/** What several parts do not say, for one line of the review. */
final class Unsaid {

  private record Part(String name, boolean lost) {}

  private final Weathering weathering;
  private final String what;
  private final String key;
  private final List<Part> parts = new ArrayList<>();

  /**
   * @param what what they do not say, such as {@code the metal of}
   * @param key the key of each part that would say it, such as {@code metal}
   */
  Unsaid(Weathering weathering, String what, String key) {
    this.weathering = weathering;
    this.what = what;
    this.key = key;
  }

  /** Adds a part and the path of the value. */
  void add(String name, String... path) {
    Part part = new Part(name, weathering.unreadable().touches(path));
    if (!parts.contains(part)) {
      parts.add(part);
    }
  }

  /** Tells it for a type of facts, once for those not given and once for those not readable. */
  void tell(Class<? extends Fact> type, Subject subject) {
    tell(type, subject, names(false), " is not given (" + key + ")");
    tell(type, subject, names(true), " could not be read");
  }

  private void tell(Class<? extends Fact> type, Subject subject, String names, String end) {
    if (!names.isEmpty()) {
      weathering.missing(type, subject, what + " " + names + end);
    }
  }

  private String names(boolean lost) {
    return joined(parts.stream().filter(part -> part.lost() == lost).map(Part::name).toList());
  }

  /** Names in one phrase, such as {@code A, B and C}. */
  static String joined(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
