package clampwise.facts.layout;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a field stands on, for finding places.
 *
 * @param seams its seams and minor ribs
 * @param seamsUnknown why the seams are not known, where they are not
 * @param drawn its wind zones, which may still be in the drawing
 */
record Ground(SeamMap seams, String seamsUnknown, Supplier<WindZones> drawn) {

  /** Finds its wind zones. */
  ZoneLookup zones() {
    return drawn.get().lookup();
  }

  /** Why the wind zones are not known, if they are not. */
  Optional<String> zonesUnknown() {
    return drawn.get().unknown();
  }
}
