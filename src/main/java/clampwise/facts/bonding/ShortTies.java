package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which islands would be grounded if all jumpers reached, and by which of them. */
final class ShortTies {

  private final Map<String, List<Span>> byFrame = new HashMap<>();
  private final Set<String> grounded = new HashSet<>();

  private ShortTies(BondGraph graph) {
    for (ShortTie tie : graph.shorts()) {
      note(tie.joint().one(), tie.at());
      note(tie.joint().other(), tie.at());
    }
    if (!byFrame.isEmpty()) {
      for (Island island : graph.withShorts().islands()) {
        if (island.isGrounded()) {
          island.frames().forEach(frame -> grounded.add(frame.name()));
        }
      }
    }
  }

  static ShortTies of(BondGraph graph) {
    return new ShortTies(graph);
  }

  private void note(PlacedModule frame, Span at) {
    byFrame.computeIfAbsent(frame.name(), unseen -> new ArrayList<>()).add(at);
  }

  /** Where the jumpers are written that would lead from an island to ground. */
  List<Span> at(Island island) {
    List<Span> found = new ArrayList<>();
    if (grounded.contains(island.first().name())) {
      for (PlacedModule frame : island.frames()) {
        found.addAll(byFrame.getOrDefault(frame.name(), List.of()));
      }
    }
    return found;
  }
}
