package clampwise.cli;

import clampwise.source.Problem;
import clampwise.source.SourceFiles;
import clampwise.source.Span;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.Function;

/**
 * Where a job comes from: a file, or standard input.
 *
 * @param fromFile what is done with a file
 * @param fromText what is done with a text and the files beside it
 * @param unreadable what is answered where there is neither
 */
record JobSource<T>(
    Function<Path, T> fromFile, FromText<T> fromText, Function<Problem, T> unreadable) {

  private static final String STANDARD_INPUT = "-";

  /** What standard input is called in positions. */
  private static final String INPUT_NAME = "<stdin>";

  /** One byte more than any job may have, so that the reader can say that it is too large. */
  private static final int MOST_BYTES = clampwise.source.YamlReader.LARGEST_BYTES + 1;

  /** Does something with a job that is no file. */
  @FunctionalInterface
  interface FromText<T> {
    T of(String name, byte[] text, SourceFiles files);
  }

  /** Takes the job of a name; {@code -} is standard input. */
  T take(String name, Console console) {
    return name.equals(STANDARD_INPUT) ? input(console) : file(name);
  }

  private T file(String name) {
    try {
      return fromFile.apply(Path.of(name));
    } catch (InvalidPathException e) {
      return unreadable.apply(unusable(name, System.getProperty("sun.jnu.encoding", "")));
    }
  }

  private T input(Console console) {
    try {
      byte[] text = console.in().readNBytes(MOST_BYTES);
      return fromText.of(INPUT_NAME, text, SourceFiles.in(Path.of("")));
    } catch (IOException e) {
      String found = "standard input that cannot be read";
      return unreadable.apply(Problem.of(Span.startOf(INPUT_NAME), found, "a readable file"));
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
}
