package clampwise.source;

import java.util.Iterator;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Reads YAML 1.2 (and so JSON) into nodes that know their place; never throws on bad text. */
public final class YamlReader {

  /** The largest text that is read [bytes]. */
  public static final int LARGEST_BYTES = 10 * 1024 * 1024;

  private static final LoadSettings SETTINGS =
      LoadSettings.builder().setCodePointLimit(LARGEST_BYTES + 1).setParseComments(false).build();

  private YamlReader() {}

  /**
   * As much of a text as could be read.
   *
   * @param root the value of the text; empty if nothing was read
   * @param brokenAt where reading had to stop; empty if the text was read to its end
   */
  public record Part(Optional<Node> root, Optional<Position> brokenAt) {
    static final Part NONE = new Part(Optional.empty(), Optional.of(Position.START));

    /** The value, if the text was read to its end. */
    public Optional<Node> whole() {
      return brokenAt.isEmpty() ? root : Optional.empty();
    }
  }

  /** The value of a text; empty, after a problem, if it cannot be read to its end. */
  public static Optional<Node> read(String file, String text, Problems problems) {
    return readPart(file, text, problems).whole();
  }

  /** The value of a file's bytes, up to where it is broken. */
  public static Part readPart(String file, byte[] bytes, Problems problems) {
    if (bytes.length > LARGEST_BYTES) {
      problems.add(tooLarge(Span.startOf(file)));
      return Part.NONE;
    }
    return Utf8.decode(file, bytes, problems)
        .map(text -> readPart(file, text, problems))
        .orElse(Part.NONE);
  }

  /** The value of a text, up to where it is broken. */
  public static Part readPart(String file, String text, Problems problems) {
    if (text.length() > LARGEST_BYTES) {
      problems.add(tooLarge(Span.startOf(file)));
      return Part.NONE;
    }
    String plain = Utf8.withoutByteOrderMark(text);
    Optional<Node> quick = QuickYaml.read(file, plain);
    return quick.isPresent() ? new Part(quick, Optional.empty()) : readWhole(file, plain, problems);
  }

  /** The same by a parser of the whole language. */
  static Part readWhole(String file, String plain, Problems problems) {
    TreeBuilder tree = new TreeBuilder(file, problems);
    try {
      return build(plain, tree, problems);
    } catch (MarkedYamlEngineException e) {
      Problem problem = SyntaxProblem.of(file, plain, e);
      return tree.breakOff(tree.quoteBefore(problem).map(SyntaxProblem::ofQuote).orElse(problem));
    } catch (ReaderException e) {
      return tree.breakOff(SyntaxProblem.of(file, plain, e));
    } catch (YamlEngineException e) {
      return tree.breakOff(Problem.of(Span.startOf(file), "text that is not YAML", "YAML or JSON"));
    }
  }

  static Problem tooLarge(Span at) {
    return Problem.of(at, "more than 10 MB", "a file of at most 10 MB");
  }

  private static Part build(String text, TreeBuilder tree, Problems problems) {
    Iterator<Event> events = new Parse(SETTINGS).parseString(text).iterator();
    while (!tree.isStopped() && events.hasNext()) {
      tree.accept(events.next());
    }
    Part part = tree.part();
    if (part.root().isEmpty() && part.brokenAt().isEmpty()) {
      problems.add(Problem.of(tree.start(), "nothing: the file is empty", "a mapping of keys"));
    }
    return part;
  }
}
