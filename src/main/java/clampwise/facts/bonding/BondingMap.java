package clampwise.facts.bonding;

import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the frames of a layout hang together, for drawings.
 *
 * @param clamped frames that clamps join, in pairs
 * @param jumpers frames that jumpers join, in pairs
 * @param lugs frames with a lug
 * @param islands names of frames that no lug reaches
 */
public record BondingMap(
    List<Pair> clamped, List<Pair> jumpers, List<PlacedModule> lugs, Set<String> islands) {

  /** Two frames that one part joins. */
  public record Pair(PlacedModule one, PlacedModule other) {}

  /** The map of a layout; none where its job says nothing about bonding. */
  public static Optional<BondingMap> of(Layout layout) {
    return layout.job().bonding().map(bonding -> of(BondGraph.of(layout, bonding)));
  }

  private static BondingMap of(BondGraph graph) {
    int clamped = graph.joints().size() - graph.ties().size();
    Set<String> islands = new HashSet<>();
    for (Island island : graph.islands()) {
      if (!island.isGrounded()) {
        island.frames().forEach(frame -> islands.add(frame.name()));
      }
    }
    return new BondingMap(
        pairs(graph.joints().subList(0, clamped)),
        pairs(graph.ties()),
        graph.lugs().stream().map(Grounding::frame).toList(),
        Set.copyOf(islands));
  }

  private static List<Pair> pairs(List<Joint> joints) {
    return joints.stream().map(joint -> new Pair(joint.one(), joint.other())).toList();
  }
}
