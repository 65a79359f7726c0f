package clampwise.source;

/**
 * A stretch of one file: where a value was written.
 *
 * @param file name of the file as the user gave it, with forward slashes
 * @param start first character
 * @param end just past the last character
 */
public record Span(String file, Position start, Position end) implements Comparable<Span> {

  /** The start of a file, for what concerns the file as a whole. */
  public static Span startOf(String file) {
    return new Span(file, Position.START, Position.START);
  }

  @Override
  public int compareTo(Span other) {
    int byFile = file.compareTo(other.file);
    int byStart = byFile != 0 ? byFile : start.compareTo(other.start);
    return byStart != 0 ? byStart : end.compareTo(other.end);
  }

  /** {@code file:line:column}, the form editors and terminals understand. */
  @Override
  public String toString() {
    return file + ":" + start.line() + ":" + start.column();
  }
}
