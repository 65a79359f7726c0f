package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import com.fasterxml.jackson.core.JsonParser;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the deserializers of one run share.
 *
 * @param defaults units of numbers written without one
 * @param broken where the text stopped being readable, if it did
 * @param reported nodes that are dropped because a problem already says why
 * @param lost collects what could not be read
 */
record Reading(
    Problems problems,
    DeclaredUnits defaults,
    Optional<Reading.Break> broken,
    Set<Node> reported,
    Lost lost) {

  /**
   * Where a text stopped being readable.
   *
   * @param section where the section began in which it broke off; what that seems to hold is in
   *     doubt
   */
  record Break(Position at, Position section) {

    static Break of(Node.Mapping root, Position at) {
      List<Node.Entry> sections = root.entries();
      Position section =
          sections.isEmpty() ? at : sections.get(sections.size() - 1).key().at().start();
      return new Break(at, section);
    }
  }

  static Reading of(JsonParser parser) {
    return ((NodeParser) parser).reading();
  }

  /** For values without declared units, read to their end. */
  static Reading plain(Problems problems) {
    return new Reading(problems, DeclaredUnits.NONE, Optional.empty(), Set.of(), new Lost());
  }

  void problem(Span at, String found, String expected) {
    problems.add(Problem.of(at, found, expected));
  }

  void unknown(Span at, String found, String expected, Misspelt misspelt) {
    problems.add(new Problem(at, found, expected, Nearest.to(misspelt.word(), misspelt.known())));
  }

  /** A word that is none of the known ones. */
  record Misspelt(String word, Collection<String> known) {}

  /** Reports a value of another shape than expected. */
  void wrongShape(Node node, String expected) {
    Position start = node.at().start();
    if (broken.filter(end -> start.compareTo(end.section) >= 0).isEmpty()) {
      problem(node.at(), found(node), expected);
    }
  }

  /** Whether a mapping was cut off by a syntax error, so that what it lacks means nothing. */
  boolean isCutOff(Node node) {
    return broken.filter(end -> node.at().end().equals(end.at)).isPresent();
  }

  /** What stands there, in plain words. */
  static String found(Node node) {
    if (node instanceof Node.Scalar scalar) {
      return scalar.isEmpty() ? "nothing" : quoted(scalar.text());
    }
    return node instanceof Node.Mapping ? "a mapping" : "a list";
  }

  static String quoted(String text) {
    String line = text.length() > 60 ? text.substring(0, 57) + "..." : text;
    return "\"" + oneLine(line) + "\"";
  }

  static String oneLine(String text) {
    return text.replace("\n", "\\n").replace("\r", "\\r").replace("\t", "\\t");
  }
}
