package clampwise.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.Anchor;

/** A mapping that is still being read: keys and values arrive in turn. */
final class MappingFrame extends Frame {

  private final Problems problems;
  private final List<Node.Entry> entries = new ArrayList<>();
  private final Map<String, Node.Scalar> keys = new HashMap<>();
  private Node.@Nullable Scalar key;
  private boolean keyIsNext = true;

  MappingFrame(String file, Position start, Optional<Anchor> anchor, Problems problems) {
    super(file, start, anchor);
    this.problems = problems;
  }

  @Override
  void take(Node node) {
    if (keyIsNext) {
      key = usableKey(node);
    } else if (key != null) {
      entries.add(new Node.Entry(key, node));
    }
    keyIsNext = !keyIsNext;
  }

  @Override
  Node node(Span at) {
    return new Node.Mapping(Collections.unmodifiableList(entries), at);
  }

  private Node.@Nullable Scalar usableKey(Node node) {
    if (!(node instanceof Node.Scalar scalar)) {
      problems.add(
          Problem.of(node.at(), "a list or mapping as a key", "a word or name before the colon"));
      return null;
    }
    Node.Scalar first = keys.putIfAbsent(scalar.text(), scalar);
    if (first != null) {
      problems.add(twice(scalar, first.at().start().line()));
      return null;
    }
    return scalar;
  }

  private static Problem twice(Node.Scalar key, int firstLine) {
    String found = "the key \"" + key.text() + "\" twice";
    return Problem.of(key.at(), found, "one; the first stands in line " + firstLine);
  }
}
