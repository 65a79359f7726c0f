package clampwise.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A value of a YAML or JSON text that knows where it was written. */
public sealed interface Node {

  /** Where the value stands. */
  Span at();

  /** Whether nothing is written: an empty place, {@code ~} or {@code null}. */
  default boolean isEmpty() {
    return false;
  }

  /**
   * A plain or quoted scalar.
   *
   * @param text its characters after unquoting
   * @param quoted whether quotes or a block style keep it text whatever it looks like
   */
  record Scalar(String text, boolean quoted, Span at) implements Node {

    /** An empty value that stands nowhere. */
    public static final Scalar NOTHING = new Scalar("", false, Span.startOf(""));

    @Override
    public boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }
  }

  /** A list. */
  record Sequence(List<Node> items, Span at) implements Node {}

  /** A mapping, in the order written; duplicate keys were reported and dropped. */
  record Mapping(List<Entry> entries, Span at) implements Node {

    /** The value of a key, if it is written. */
    public Optional<Node> get(String key) {
      for (Entry entry : entries) {
        if (entry.key().text().equals(key)) {
          return Optional.of(entry.value());
        }
      }
      return Optional.empty();
    }

    /** The same mapping without a key. */
    public Mapping without(String key) {
      List<Entry> others = new ArrayList<>(entries);
      others.removeIf(entry -> entry.key().text().equals(key));
      return new Mapping(others, at);
    }

    /** The same mapping with another value of a key, which is added if it is not there. */
    public Mapping with(String key, Node value) {
      List<Entry> changed = new ArrayList<>(entries);
      for (int i = 0; i < changed.size(); i++) {
        Scalar written = changed.get(i).key();
        if (written.text().equals(key)) {
          changed.set(i, new Entry(written, value));
          return new Mapping(changed, at);
        }
      }
      changed.add(new Entry(new Scalar(key, false, value.at()), value));
      return new Mapping(changed, at);
    }

    /** The mapping of a key, if one is written. */
    public Optional<Mapping> mapping(String key) {
      return get(key).filter(Mapping.class::isInstance).map(Mapping.class::cast);
    }
  }

  /** One key with its value. */
  record Entry(Scalar key, Node value) {}
}
