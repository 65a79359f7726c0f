package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Frames that are bonded to each other.
 *
 * @param frames in the order of the layout
 * @param lugs lugs on its frames
 * @param sure frames that are bonded to a lug by parts that are known to bond
 * @param doubts what is not known of its joints and lugs
 */
record Island(List<PlacedModule> frames, int lugs, Set<String> sure, Set<String> doubts) {

  PlacedModule first() {
    return frames.get(0);
  }

  boolean isGrounded() {
    return lugs > 0;
  }

  /** Whether all its frames are bonded to a lug, whatever the parts in doubt turn out to be. */
  boolean isSure() {
    return sure.size() == frames.size();
  }

  Set<String> fields() {
    return frames.stream().map(PlacedModule::field).collect(Collectors.toSet());
  }
}
