package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * Where the keys of a job stand.
 *
 * @param root the job as written
 */
public record Keys(Optional<Node.Mapping> root) {

  static final Keys NONE = new Keys(Optional.empty());

  /** Where the last key of a path stands that is written; empty if not even the first one is. */
  Optional<Span> lastOf(List<String> path) {
    Optional<Span> last = Optional.empty();
    Optional<Node.Mapping> in = root;
    for (String key : path) {
      Optional<Node.Entry> entry = in.flatMap(mapping -> entry(mapping, key));
      if (entry.isEmpty()) {
        return last;
      }
      last = entry.map(found -> found.key().at());
      in =
          entry
              .map(Node.Entry::value)
              .filter(Node.Mapping.class::isInstance)
              .map(Node.Mapping.class::cast);
    }
    return last;
  }

  private static Optional<Node.Entry> entry(Node.Mapping mapping, String key) {
    for (Node.Entry entry : mapping.entries()) {
      if (entry.key().text().equals(key)) {
        return Optional.of(entry);
      }
    }
    return Optional.empty();
  }
}
