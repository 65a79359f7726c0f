package clampwise.cli;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.Problem;
import clampwise.source.SourceFiles;
import clampwise.source.Span;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Reviews jobs by the rules that ship with the program. */
final class ReviewDesk implements Desk {

  private static final String STANDARD_INPUT = "-";

  /** What standard input is called in positions. */
  private static final String INPUT_NAME = "<stdin>";

  /** One byte more than any job may have, so that the reader can say that it is too large. */
  private static final int MOST_BYTES = clampwise.source.YamlReader.LARGEST_BYTES + 1;

  private final Reviewer reviewer = new Reviewer();

  @Override
  public Review review(String name, Console console) {
    return name.equals(STANDARD_INPUT) ? fromInput(console) : fromFile(name);
  }

  private Review fromFile(String name) {
    try {
      return reviewer.review(Path.of(name));
    } catch (InvalidPathException e) {
      return unreadable(unusable(name, System.getProperty("sun.jnu.encoding", "")));
    }
  }

  private Review fromInput(Console console) {
    try {
      byte[] text = console.in().readNBytes(MOST_BYTES);
      return reviewer.review(INPUT_NAME, text, SourceFiles.in(Path.of("")));
    } catch (IOException e) {
      String found = "standard input that cannot be read";
      return unreadable(Problem.of(Span.startOf(INPUT_NAME), found, "a readable file"));
    }
  }

  /** A name that is no path: mostly because the locale knows no letters beyond its own. */
  static Problem unusable(String name, String encoding) {
    Span at = Span.startOf(name);
    boolean every = encoding.isEmpty() || encoding.equalsIgnoreCase("UTF-8");
    return every
        ? Problem.of(at, "a name that no file can have", "a readable file")
        : Problem.of(
            at,
            "a name with letters that the locale's encoding, " + encoding + ", does not have",
            "a UTF-8 locale, such as LC_ALL=C.UTF-8");
  }

  private static Review unreadable(Problem problem) {
    return new Review(
        problem.at().file(), "", 0, List.of(problem), List.of(), List.of(), List.of());
  }
}
