package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;

/**
 * Frames that are joined or that jumpers would join, and nothing would to any other.
 *
 * @param frames field by field and column by column
 * @param joints what joins them
 * @param lugs their lugs
 */
record BondCluster(List<PlacedModule> frames, List<Joint> joints, List<Grounding> lugs) {

  BondCluster() {
    this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
  }
}
