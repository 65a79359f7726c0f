package clampwise.takeoff;

import java.util.Set;

/**
 * Something that a take-off should hold but does not.
 *
 * @param what it is
 * @param reason why it could not be counted, and what would have to be given
 * @param kinds the kinds of parts whose numbers are too low for it
 */
public record NotCounted(String what, String reason, Set<PartKind> kinds) {

  NotCounted(String what, String reason) {
    this(what, reason, Set.of());
  }

  /** Whether modules or what holds them are missing. */
  boolean isOfModules() {
    return kinds.contains(PartKind.MODULE) || kinds.contains(PartKind.END_CLAMP);
  }
}
