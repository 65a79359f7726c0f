package clampwise.facts.layout;

import clampwise.facts.layout.Grip.Edge;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gathers the attachments of each supported module edge. */
final class ModuleEdges {

  private record Key(String module, Edge edge) {}

  private ModuleEdges() {}

  /** Both supported edges of every module, with their attachments left to right. */
  static List<ModuleEdge> of(List<PlacedModule> modules, List<Attachment> attachments) {
    Map<Key, List<Attachment>> byEdge = new HashMap<>();
    for (Attachment attachment : attachments) {
      for (Grip grip : attachment.grips()) {
        Key key = new Key(grip.module().name(), grip.edge());
        byEdge.computeIfAbsent(key, none -> new ArrayList<>()).add(attachment);
      }
    }
    List<ModuleEdge> edges = new ArrayList<>();
    for (PlacedModule module : modules) {
      for (Edge edge : Edge.values()) {
        List<Attachment> held = byEdge.getOrDefault(new Key(module.name(), edge), List.of());
        edges.add(new ModuleEdge(module, edge, List.copyOf(held)));
      }
    }
    return List.copyOf(edges);
  }
}
