package clampwise.source;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Builds nodes from parser events. Events rather than the library's own tree, because what stands
 * before a syntax error can be kept, and depth and aliases are counted before anything grows.
 */
final class TreeBuilder {

  private static final int DEEPEST = 50;
  private static final int MOST_ALIASED = 100_000;

  /** A value that an alias may repeat, with the number of nodes in it. */
  private record Anchored(Node node, int size) {}

  private final String file;
  private final Problems problems;
  private final Deque<Frame> open = new ArrayDeque<>();
  private final Map<Anchor, Anchored> anchors = new HashMap<>();
  private @Nullable Node root;
  private @Nullable Position brokenAt;
  private @Nullable Span longQuote;
  private boolean stopped;
  private int documents;
  private int aliased;

  TreeBuilder(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  boolean isStopped() {
    return stopped;
  }

  Span start() {
    return Span.startOf(file);
  }

  YamlReader.Part part() {
    return new YamlReader.Part(Optional.ofNullable(root), Optional.ofNullable(brokenAt));
  }

  void accept(Event event) {
    switch (event.getEventId()) {
      case DocumentStart -> startDocument(event);
      case Scalar -> scalar((ScalarEvent) event);
      case Alias -> alias((AliasEvent) event);
      case SequenceStart, MappingStart -> startCollection((CollectionStartEvent) event);
      case SequenceEnd, MappingEnd -> endCollection(event);
      default -> {}
    }
  }

  /** Ends the reading at a problem and closes what is still open. */
  YamlReader.Part breakOff(Problem problem) {
    problems.add(problem);
    stopped = true;
    brokenAt = problem.at().start();
    while (!open.isEmpty()) {
      place(open.pop().close(brokenAt), 1);
    }
    return part();
  }

  private void startDocument(Event event) {
    documents++;
    if (documents == 2) {
      problems.add(
          Problem.of(span(event), "a second document after ---", "one document in a file"));
      stopped = true;
    }
  }

  /** The text in quotes over several lines that ends in the line of a problem, if one does. */
  Optional<Span> quoteBefore(Problem problem) {
    int line = problem.at().start().line();
    return Optional.ofNullable(longQuote).filter(quote -> quote.end().line() == line);
  }

  private void scalar(ScalarEvent event) {
    refuseTag(event, event.getTag());
    boolean quoted =
        event.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED
            || event.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
    if (quoted && span(event).start().line() < span(event).end().line()) {
      longQuote = span(event);
    }
    Node.Scalar scalar = new Node.Scalar(event.getValue(), !event.isPlain(), span(event));
    remember(event.getAnchor(), scalar, 1);
    place(scalar, 1);
  }

  private void alias(AliasEvent event) {
    Anchored target = anchors.get(event.getAlias());
    String name = "*" + event.getAlias().getValue();
    if (target == null) {
      breakOff(
          Problem.of(
              span(event), "the alias " + name, "an anchor of that name, finished before it"));
      return;
    }
    aliased += target.size();
    if (aliased > MOST_ALIASED) {
      breakOff(
          Problem.of(
              span(event),
              "aliases that repeat more than " + MOST_ALIASED + " values",
              "fewer aliases"));
      return;
    }
    place(target.node(), target.size());
  }

  private void startCollection(CollectionStartEvent event) {
    refuseTag(event, event.getTag());
    if (open.size() == DEEPEST) {
      breakOff(
          Problem.of(
              span(event), "values nested more than " + DEEPEST + " deep", "a flatter file"));
      return;
    }
    Position start = position(event.getStartMark());
    boolean mapping = event.getEventId() == Event.ID.MappingStart;
    open.push(
        mapping
            ? new MappingFrame(file, start, event.getAnchor(), problems)
            : new SequenceFrame(file, start, event.getAnchor()));
  }

  private void endCollection(Event event) {
    Frame frame = open.pop();
    // The end of a block has no text of its own: its mark already stands at what follows.
    boolean bracket = !event.getStartMark().map(Mark::getIndex).equals(indexOfEnd(event));
    Node node = bracket ? frame.close(position(event.getEndMark())) : frame.close();
    remember(frame.anchor(), node, frame.size());
    place(node, frame.size());
  }

  private static Optional<Integer> indexOfEnd(Event event) {
    return event.getEndMark().map(Mark::getIndex);
  }

  private void remember(Optional<Anchor> anchor, Node node, int size) {
    anchor.ifPresent(name -> anchors.put(name, new Anchored(node, size)));
  }

  private void place(Node node, int size) {
    Frame frame = open.peek();
    if (frame != null) {
      frame.add(node, size);
    } else {
      root = node;
    }
  }

  private void refuseTag(Event event, Optional<String> tag) {
    tag.ifPresent(
        name ->
            problems.add(
                Problem.of(span(event), "the tag " + name, "a plain value without a tag")));
  }

  private Span span(Event event) {
    return new Span(file, position(event.getStartMark()), position(event.getEndMark()));
  }

  private static Position position(Optional<Mark> mark) {
    return mark.map(TreeBuilder::position).orElse(Position.START);
  }

  static Position position(Mark mark) {
    return new Position(mark.getLine() + 1, mark.getColumn() + 1);
  }
}
