package clampwise.source;

import java.util.List;

/** A value of a YAML or JSON text that knows where it was written. */
public sealed interface Node {

  /** Where the value stands. */
  Span at();

  /**
   * A plain or quoted scalar.
   *
   * @param text its characters after unquoting
   * @param quoted whether quotes or a block style keep it text whatever it looks like
   */
  record Scalar(String text, boolean quoted, Span at) implements Node {}

  /** A list. */
  record Sequence(List<Node> items, Span at) implements Node {}

  /** A mapping, in the order written; duplicate keys were reported and dropped. */
  record Mapping(List<Entry> entries, Span at) implements Node {}

  /** One key with its value. */
  record Entry(Scalar key, Node value) {}
}
