package clampwise.proof;

import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job that is still being drawn: mappings, lists and texts that are changed by path, such as
 * {@code fields.A.gap} or {@code bonding.lugs.0.on}.
 */
final class Draft {
  private final Map<String, Object> root;

  private Draft(Map<String, Object> root) {
    this.root = root;
  }

  static Draft empty() {
    return new Draft(new LinkedHashMap<>());
  }

  static Draft read(String yaml) {
    return new Draft(mapping(value(yaml)));
  }

  /** A value as this class keeps it: a text, a list or a mapping. */
  static Object value(String yaml) {
    Problems problems = new Problems();
    Node node = YamlReader.read("draft", yaml, problems).orElseThrow();
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(problems.sorted() + "\n" + yaml);
    }
    return value(node);
  }

  private static Object value(Node node) {
    if (node instanceof Node.Mapping mapping) {
      Map<String, Object> map = new LinkedHashMap<>();
      mapping.entries().forEach(each -> map.put(each.key().text(), value(each.value())));
      return map;
    }
    if (node instanceof Node.Sequence sequence) {
      List<Object> list = new ArrayList<>();
      sequence.items().forEach(each -> list.add(value(each)));
      return list;
    }
    return ((Node.Scalar) node).text();
  }

  @SuppressWarnings("unchecked")
  static Map<String, Object> mapping(Object value) {
    return (Map<String, Object>) value;
  }

  @SuppressWarnings("unchecked")
  static List<Object> list(Object value) {
    return (List<Object>) value;
  }

  static Object copy(Object value) {
    if (value instanceof Map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      mapping(value).forEach((key, each) -> copy.put(key, copy(each)));
      return copy;
    }
    if (value instanceof List) {
      List<Object> copy = new ArrayList<>();
      list(value).forEach(each -> copy.add(copy(each)));
      return copy;
    }
    return value;
  }

  Draft copy() {
    return new Draft(mapping(copy((Object) root)));
  }

  Map<String, Object> root() {
    return root;
  }

  Written written() {
    return Written.of(root);
  }

  Optional<Object> get(String path) {
    Object at = root;
    for (String step : path.split("\\.")) {
      Optional<Object> next = child(at, step);
      if (next.isEmpty()) {
        return next;
      }
      at = next.get();
    }
    return Optional.of(at);
  }

  boolean has(String path) {
    return get(path).isPresent();
  }

  String text(String path) {
    return (String) get(path).orElseThrow(() -> new IllegalArgumentException(path));
  }

  private static Optional<Object> child(Object at, String step) {
    if (at instanceof Map) {
      return Optional.ofNullable(mapping(at).get(step));
    }
    boolean item = at instanceof List && step.matches("\\d+");
    return item && Integer.parseInt(step) < list(at).size()
        ? Optional.of(list(at).get(Integer.parseInt(step)))
        : Optional.empty();
  }

  /**
   * Writes a value; {@code ~} or an empty text removes the key. An item {@code +} is added to its
   * list.
   */
  void set(String path, Object value) {
    int dot = path.lastIndexOf('.');
    Object parent = dot < 0 ? root : open(path.substring(0, dot));
    String key = path.substring(dot + 1);
    boolean removes = value.equals("~");
    if (parent instanceof Map) {
      if (removes) {
        mapping(parent).remove(key);
      } else {
        mapping(parent).put(key, value);
      }
    } else if (key.equals("+")) {
      list(parent).add(value);
    } else if (removes) {
      list(parent).remove(Integer.parseInt(key));
    } else {
      list(parent).set(Integer.parseInt(key), value);
    }
  }

  private Object open(String path) {
    Object at = root;
    for (String step : path.split("\\.")) {
      if (at instanceof Map) {
        mapping(at).computeIfAbsent(step, key -> new LinkedHashMap<String, Object>());
      }
      at = child(at, step).orElseThrow(() -> new IllegalArgumentException(path));
    }
    return at;
  }

  /**
   * Lays another text over this one: mappings merge, everything else replaces, {@code ~} removes.
   */
  void lay(String yaml) {
    lay(root, mapping(value(yaml)));
  }

  private static void lay(Map<String, Object> under, Map<String, Object> over) {
    over.forEach(
        (key, value) -> {
          if (value.equals("~")) {
            under.remove(key);
          } else if (value instanceof Map && under.get(key) instanceof Map<?, ?> base) {
            lay(mapping(base), mapping(value));
          } else {
            under.put(key, value);
          }
        });
  }
}
