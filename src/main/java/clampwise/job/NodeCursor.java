package clampwise.job;

import clampwise.source.Node;
import java.util.List;

/** A place inside a mapping or list whose values are being read. */
final class NodeCursor {

  private final Node node;
  private final List<Node.Entry> entries;
  private final List<Node> items;
  private int index = -1;
  private boolean atKey;

  private NodeCursor(Node node, List<Node.Entry> entries, List<Node> items) {
    this.node = node;
    this.entries = entries;
    this.items = items;
  }

  static NodeCursor over(Node.Mapping mapping) {
    return new NodeCursor(mapping, mapping.entries(), List.of());
  }

  static NodeCursor over(Node.Sequence sequence) {
    return new NodeCursor(sequence, List.of(), sequence.items());
  }

  /** Moves to the next entry or item; false after the last one. */
  boolean advance() {
    index++;
    atKey = index < entries.size();
    return atKey || index < items.size();
  }

  boolean isAtKey() {
    return atKey;
  }

  /** The value stood on; a mapping's key is then behind. */
  Node value() {
    atKey = false;
    return entries.isEmpty() ? items.get(index) : entries.get(index).value();
  }

  String key() {
    return isInside() ? entries.get(index).key().text() : "";
  }

  Node.Scalar keyNode() {
    return entries.get(index).key();
  }

  Node node() {
    return node;
  }

  private boolean isInside() {
    return index >= 0 && index < entries.size();
  }
}
