package clampwise.source;

import java.util.Optional;
import org.snakeyaml.engine.v2.common.Anchor;

/** A list or mapping that is still being read. */
abstract class Frame {

  private final String file;
  private final Position start;
  private final Optional<Anchor> anchor;
  private Position end;
  private int size = 1;

  Frame(String file, Position start, Optional<Anchor> anchor) {
    this.file = file;
    this.start = start;
    this.end = start;
    this.anchor = anchor;
  }

  /** Takes the next key, value or item. */
  final void add(Node node, int nodeSize) {
    size += nodeSize;
    Span at = node.at();
    // An alias brings a node from elsewhere; only what lies behind moves the end.
    if (at.end().compareTo(end) > 0) {
      end = at.end();
    }
    take(node);
  }

  final Node close() {
    return node(new Span(file, start, end));
  }

  final Node close(Position closingAt) {
    return node(new Span(file, start, closingAt));
  }

  final Optional<Anchor> anchor() {
    return anchor;
  }

  final int size() {
    return size;
  }

  abstract void take(Node node);

  abstract Node node(Span at);
}
