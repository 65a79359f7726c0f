package clampwise.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays one tree of values over another. */
public final class Overlay {

  private Overlay() {}

  /**
   * The base with everything replaced that the other says: mappings merge, lists and scalars
   * replace, an empty value ({@code ~}) removes its key. Every value keeps its own place.
   */
  public static Node lay(Node base, Node over) {
    return base instanceof Node.Mapping under && over instanceof Node.Mapping upper
        ? merge(under, upper)
        : over;
  }

  private static Node.Mapping merge(Node.Mapping base, Node.Mapping over) {
    Map<String, Node.Entry> merged = new LinkedHashMap<>();
    for (Node.Entry entry : base.entries()) {
      merged.put(entry.key().text(), entry);
    }
    for (Node.Entry entry : over.entries()) {
      put(merged, entry);
    }
    return new Node.Mapping(List.copyOf(new ArrayList<>(merged.values())), over.at());
  }

  private static void put(Map<String, Node.Entry> merged, Node.Entry entry) {
    String name = entry.key().text();
    if (entry.value().isEmpty()) {
      merged.remove(name);
      return;
    }
    Node.Entry base = merged.get(name);
    Node value = base == null ? entry.value() : lay(base.value(), entry.value());
    merged.put(name, new Node.Entry(entry.key(), value));
  }
}
