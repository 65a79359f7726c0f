package clampwise.job;

import clampwise.source.Node;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Collects the nodes of a tree that could not be read. */
final class Lost {

  private final Map<Node, Optional<String>> nodes = new IdentityHashMap<>();

  void add(Node value) {
    nodes.putIfAbsent(value, Optional.empty());
  }

  /** Adds the value of a misspelt key under the key that was meant, if there is one like it. */
  void addMisspelt(Node value, Optional<String> meant) {
    nodes.put(value, meant);
  }

  /** Where in a tree they lie. */
  Unreadable in(Node.Mapping root) {
    Set<List<String>> paths = new HashSet<>();
    if (!nodes.isEmpty()) {
      collect(root, List.of(), paths);
    }
    return new Unreadable(paths, new Keys(Optional.of(root)));
  }

  private void collect(Node node, List<String> path, Set<List<String>> paths) {
    if (nodes.containsKey(node)) {
      paths.add(path);
    } else if (node instanceof Node.Mapping mapping) {
      for (Node.Entry entry : mapping.entries()) {
        collect(entry.value(), below(path, entry), paths);
      }
    } else if (node instanceof Node.Sequence list) {
      list.items().forEach(item -> collect(item, path, paths));
    }
  }

  private List<String> below(List<String> path, Node.Entry entry) {
    List<String> below = new ArrayList<>(path);
    Optional<String> meant = nodes.getOrDefault(entry.value(), Optional.empty());
    below.add(meant.orElse(entry.key().text()));
    return below;
  }
}
