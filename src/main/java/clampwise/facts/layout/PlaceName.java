package clampwise.facts.layout;

/** Names of places and modules on the drawing: {@code R2C3} and {@code A.R2C3}. */
final class PlaceName {

  private PlaceName() {}

  static String of(int row, int column) {
    return "R" + row + "C" + column;
  }

  /** A module's name, unique in the job. */
  static String module(String field, int row, int column) {
    return field + "." + of(row, column);
  }

  /** The place without the name of its field before it. */
  static String within(String field, String written) {
    return written.startsWith(field + ".") ? written.substring(field.length() + 1) : written;
  }
}
