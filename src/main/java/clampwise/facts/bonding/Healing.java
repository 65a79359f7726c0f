package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The jumpers to add so that islands reach ground, one for each island: a tree that grows from the
 * grounded islands over neighbouring frames, so that no smaller set would do.
 */
final class Healing {

  private final Frames frames;
  private final Map<String, Island> islandOf = new HashMap<>();
  private final Map<Island, Tie> jumpers = new IdentityHashMap<>();
  private final Deque<Island> reached = new ArrayDeque<>();

  Healing(Frames frames, List<Island> islands) {
    this.frames = frames;
    islands.forEach(island -> island.frames().forEach(frame -> islandOf.put(frame.name(), island)));
    islands.stream().filter(Island::isGrounded).forEach(reached::add);
    while (!reached.isEmpty()) {
      reached.remove().frames().forEach(this::growFrom);
    }
  }

  /** The jumper that ties an island to those before it, if it lies beside one of them. */
  Optional<Tie> jumper(Island island) {
    return Optional.ofNullable(jumpers.get(island));
  }

  /** The graph once some of its islands are grounded as told. */
  BondGraph healed(BondGraph graph, List<Island> cut) {
    List<Tie> ties = cut.stream().flatMap(island -> jumper(island).stream()).toList();
    List<PlacedModule> alone =
        cut.stream().filter(island -> jumper(island).isEmpty()).map(Island::first).toList();
    return graph.with(ties, alone);
  }

  private void growFrom(PlacedModule frame) {
    frames.beside(frame).forEach(other -> reach(frame, other));
  }

  private void reach(PlacedModule from, PlacedModule to) {
    Island island = islandOf.get(to.name());
    if (island != null && !island.isGrounded() && !jumpers.containsKey(island)) {
      jumpers.put(island, Tie.of(from, to));
      reached.add(island);
    }
  }
}
