package clampwise.finding;

/**
 * What a fact or finding is about: a path of trade words from the whole to the part, such as {@code
 * fields.A / module R2C3 / lower edge}. It never holds a line number or a measured value, so that
 * it survives edits elsewhere.
 */
public record Subject(String path) implements Comparable<Subject> {

  public static final String SEPARATOR = " / ";

  public static Subject of(String first, String... more) {
    String rest = more.length == 0 ? "" : SEPARATOR + String.join(SEPARATOR, more);
    return new Subject(first + rest);
  }

  /** A part of this subject. */
  public Subject part(String name) {
    return new Subject(path + SEPARATOR + name);
  }

  /** The thing of the job that it belongs to: the first part of its path. */
  public String first() {
    int end = path.indexOf(SEPARATOR);
    return end < 0 ? path : path.substring(0, end);
  }

  @Override
  public int compareTo(Subject other) {
    return NaturalOrder.compare(path, other.path);
  }

  @Override
  public String toString() {
    return path;
  }
}
