package clampwise.takeoff;

import clampwise.facts.layout.Layout;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What a layout takes of each part, counted on the drawing, without spares.
 *
 * @param parts number of each part
 * @param notCounted what could not be counted
 */
public record Counts(SortedMap<Part, Integer> parts, List<NotCounted> notCounted) {

  /** Counts the parts of a layout: each attachment, clamp and joint that is there, one by one. */
  public static Counts of(Layout layout) {
    PartCounter counter = new PartCounter(layout);
    counter.count();
    return counter.counts();
  }

  /** How many there are of all parts of a kind. */
  public int of(PartKind kind) {
    return parts.entrySet().stream()
        .filter(entry -> entry.getKey().kind() == kind)
        .mapToInt(entry -> entry.getValue())
        .sum();
  }

  /** Why parts of a kind are not all counted, if they are not. */
  public Optional<String> unknown(PartKind kind) {
    return notCounted.stream()
        .filter(missing -> missing.kinds().contains(kind))
        .findFirst()
        .map(missing -> missing.what() + ": " + missing.reason());
  }

  /** How many hold the array to the roof. */
  public int attachments() {
    return of(PartKind.SEAM_CLAMP) + of(PartKind.RIB_BRACKET) + of(PartKind.ATTACHMENT);
  }

  /** Whether there is a module at all. */
  boolean hasModules() {
    return parts.keySet().stream().anyMatch(part -> part.kind() == PartKind.MODULE);
  }
}
