package clampwise.policy;

import clampwise.job.Text;
import clampwise.source.Node;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The part of a job that a policy writes for it, where the job says nothing itself. */
final class Underlay {

  static final Node.Mapping EMPTY = new Node.Mapping(List.of(), Span.startOf(""));

  private Underlay() {}

  /** The codes of the site, as a job would write them. */
  static Optional<Node.Mapping> of(PolicyFile.Codes codes) {
    List<Node.Entry> entries = new ArrayList<>();
    codes.loads().ifPresent(text -> entries.add(entry("loads", text)));
    codes.electrical().ifPresent(text -> entries.add(entry("electrical", text)));
    codes.fire().ifPresent(text -> entries.add(entry("fire", text)));
    if (entries.isEmpty()) {
      return Optional.empty();
    }
    Span at = entries.get(0).value().at();
    return Optional.of(in("site", in("codes", new Node.Mapping(entries, at), at), at));
  }

  private static Node.Entry entry(String key, Text text) {
    Node.Scalar value = new Node.Scalar(text.value(), true, text.at());
    return new Node.Entry(new Node.Scalar(key, false, text.at()), value);
  }

  private static Node.Mapping in(String key, Node value, Span at) {
    return new Node.Mapping(List.of(new Node.Entry(new Node.Scalar(key, false, at), value)), at);
  }
}
