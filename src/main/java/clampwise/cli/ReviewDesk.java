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
      return unreadable(name, "a name that no file can have");
    }
  }

  private Review fromInput(Console console) {
    try {
      byte[] text = console.in().readNBytes(MOST_BYTES);
      return reviewer.review(INPUT_NAME, text, SourceFiles.in(Path.of("")));
    } catch (IOException e) {
      return unreadable(INPUT_NAME, "standard input that cannot be read");
    }
  }

  private static Review unreadable(String name, String found) {
    Problem problem = Problem.of(Span.startOf(name), found, "a readable file");
    return new Review(name, "", 0, List.of(problem), List.of(), List.of(), List.of());
  }
}
