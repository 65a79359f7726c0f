package clampwise.source;

/**
 * A place in a text, counted from 1.
 *
 * @param line line number [1..]
 * @param column column in Unicode code points [1..]
 */
public record Position(int line, int column) implements Comparable<Position> {

  public static final Position START = new Position(1, 1);

  @Override
  public int compareTo(Position other) {
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }
}
