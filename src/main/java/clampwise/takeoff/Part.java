package clampwise.takeoff;

import java.util.Comparator;

/**
 * A part as it is ordered.
 *
 * @param name its name in the job or the catalogue; empty where the drawing names none
 */
public record Part(PartKind kind, String name) implements Comparable<Part> {

  private static final Comparator<Part> AS_LISTED =
      Comparator.comparing(Part::kind).thenComparing(Part::name);

  @Override
  public int compareTo(Part other) {
    return AS_LISTED.compare(this, other);
  }

  /** How a sentence calls it, such as {@code mid clamp MC-30}. */
  @Override
  public String toString() {
    return name.isEmpty() ? kind.word() + " (none named)" : kind.word() + " " + name;
  }
}
