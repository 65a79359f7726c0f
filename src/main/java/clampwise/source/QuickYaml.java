package clampwise.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the YAML that most people write, several times faster than a parser of the whole language:
 * mappings, lists and scalars on one line, in blocks or brackets, with comments. At anything else,
 * and at every mistake, it gives up, and the whole parser reads the text from its start.
 */
final class QuickYaml {
  private static final int DEEPEST = 40;

  private final QuickText in;

  private QuickYaml(QuickText in) {
    this.in = in;
  }

  /** The value of a text; empty if it is for the whole parser. */
  static Optional<Node> read(String file, String text) {
    if (!QuickText.isPlain(text)) {
      return Optional.empty();
    }
    QuickYaml reader = new QuickYaml(new QuickText(file, text));
    try {
      return Optional.of(reader.document());
    } catch (QuickText.Unusual e) {
      return Optional.empty();
    }
  }

  private Node document() {
    in.skipToContent();
    Node root = block(-1, 0);
    in.need(in.isAtEnd() && !(root instanceof Node.Scalar));
    return root;
  }

  /**
   * A value in block style, read to the start of what follows it.
   *
   * @param outer column of what it belongs to, which what follows may not lie right of
   */
  private Node block(int outer, int depth) {
    in.need(depth < DEEPEST && !in.isAtEnd());
    if (in.isDash()) {
      return sequence(in.column(), depth);
    }
    if (in.isBracket()) {
      return closed(flow(depth), outer);
    }
    int column = in.column();
    Node.Scalar scalar = in.isQuote() ? in.quoted() : in.plain(false);
    return in.takeColon() ? mapping(scalar, column, depth) : closed(scalar, outer);
  }

  /** What fills the rest of its line, and is not gone on with in the next. */
  private Node closed(Node node, int outer) {
    in.needRestEmpty();
    in.skipToContent();
    in.need(in.isAtEnd() || in.column() <= outer);
    return node;
  }

  private Node mapping(Node.Scalar first, int column, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    Node.Scalar key = first;
    while (true) {
      in.need(keys.add(key.text()));
      Node value = value(column, depth);
      entries.add(new Node.Entry(key, value));
      if (in.isAtEnd() || in.column() < column) {
        Span at = in.span(first.at().start(), value.at().end());
        return new Node.Mapping(Collections.unmodifiableList(entries), at);
      }
      in.need(in.column() == column && !in.isDash() && !in.isBracket());
      key = in.isQuote() ? in.quoted() : in.plain(false);
      in.need(in.takeColon());
    }
  }

  /** What stands behind a colon, or below it. */
  private Node value(int column, int depth) {
    Node.Scalar nothing = in.nothingHere();
    in.skipSpaces();
    if (!in.isRestEmpty()) {
      return inline(column, depth);
    }
    in.skipToContent();
    if (!in.isAtEnd() && (in.column() > column || in.column() == column && in.isDash())) {
      return block(column, depth + 1);
    }
    return nothing;
  }

  private Node inline(int column, int depth) {
    in.need(!in.isDash());
    Node node = in.isBracket() ? flow(depth + 1) : in.isQuote() ? in.quoted() : in.plain(false);
    return closed(node, column);
  }

  private Node sequence(int column, int depth) {
    List<Node> items = new ArrayList<>();
    Position start = in.position();
    while (true) {
      in.skip(1);
      in.skipSpaces();
      if (in.isRestEmpty()) {
        in.skipToContent();
        in.need(!in.isAtEnd() && in.column() > column);
      }
      items.add(block(column, depth + 1));
      boolean over = in.isAtEnd() || in.column() < column || !in.isDash();
      if (over) {
        Span at = in.span(start, items.get(items.size() - 1).at().end());
        return new Node.Sequence(Collections.unmodifiableList(items), at);
      }
      in.need(in.column() == column);
    }
  }

  /** A value in brackets. */
  private Node flow(int depth) {
    in.need(depth < DEEPEST);
    if (!in.isBracket()) {
      return in.isQuote() ? in.quoted() : in.plain(true);
    }
    Position start = in.position();
    boolean mapping = in.peek() == '{';
    in.skip(1);
    return mapping ? flowMapping(start, depth) : flowSequence(start, depth);
  }

  private Node flowMapping(Position start, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Set<String> keys = new HashSet<>();
    in.skipToContent();
    while (in.peek() != '}') {
      in.need(!in.isBracket());
      Node.Scalar key = in.isQuote() ? in.quoted() : in.plain(true);
      in.need(in.takeColon() && keys.add(key.text()));
      in.skipToContent();
      entries.add(new Node.Entry(key, flow(depth + 1)));
      comma('}');
    }
    in.skip(1);
    return new Node.Mapping(Collections.unmodifiableList(entries), in.span(start, in.position()));
  }

  private Node flowSequence(Position start, int depth) {
    List<Node> items = new ArrayList<>();
    in.skipToContent();
    while (in.peek() != ']') {
      items.add(flow(depth + 1));
      comma(']');
    }
    in.skip(1);
    return new Node.Sequence(Collections.unmodifiableList(items), in.span(start, in.position()));
  }

  private void comma(char end) {
    in.skipToContent();
    if (in.peek() == ',') {
      in.skip(1);
      in.skipToContent();
    } else {
      in.need(in.peek() == end);
    }
  }
}
