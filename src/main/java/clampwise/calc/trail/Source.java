package clampwise.calc.trail;

/**
 * Where a formula, a number of a table or an assumption comes from.
 *
 * @param document key of the references, such as {@code asce-7-16}, or {@code practice}
 * @param edition edition of the document, empty where there is none
 * @param clause clause, equation, table or figure, empty where there is none
 * @param obtained how it was obtained: read, second-hand, from a library, from memory, worked out,
 *     common practice
 * @param validity where it holds, empty where nothing is to be said
 */
public record Source(
    String document, String edition, String clause, String obtained, String validity) {

  /** Plain mechanics or arithmetic, which needs no document. */
  public static final Source STATICS = new Source("statics", "", "", "worked out", "");

  /** A source without edition and validity. */
  public static Source of(String document, String clause, String obtained) {
    return new Source(document, "", clause, obtained, "");
  }
}
