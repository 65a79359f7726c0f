package clampwise.source;

import java.util.Comparator;

/**
 * A stretch of one file: where a value was written.
 *
 * @param file name of the file as the user gave it, with forward slashes
 * @param start first character
 * @param end just past the last character
 */
public record Span(String file, Position start, Position end) implements Comparable<Span> {

  private static final Comparator<Span> ORDER =
      Comparator.comparing(Span::file).thenComparing(Span::start).thenComparing(Span::end);

  /** The start of a file, for what concerns the file as a whole. */
  public static Span startOf(String file) {
    return new Span(file, Position.START, Position.START);
  }

  @Override
  public int compareTo(Span other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column}, the form editors and terminals understand. */
  @Override
  public String toString() {
    return file + ":" + start.line() + ":" + start.column();
  }
}
