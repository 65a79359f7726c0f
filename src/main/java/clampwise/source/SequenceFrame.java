package clampwise.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.Anchor;

/** A list that is still being read. */
final class SequenceFrame extends Frame {

  private final List<Node> items = new ArrayList<>();

  SequenceFrame(String file, Position start, Optional<Anchor> anchor) {
    super(file, start, anchor);
  }

  @Override
  void take(Node node) {
    items.add(node);
  }

  @Override
  Node node(Span at) {
    return new Node.Sequence(Collections.unmodifiableList(items), at);
  }
}
