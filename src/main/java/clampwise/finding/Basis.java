package clampwise.finding;

/**
 * What a limit rests on.
 *
 * @param key key into the references
 * @param edition editions of the document it holds in, empty if that is said by the document
 * @param clause clause, table or figure, empty if there is none
 * @param obtained how the number was obtained, empty if there is no number
 * @param validity where the number holds, empty if there is none
 */
public record Basis(String key, String edition, String clause, String obtained, String validity) {

  /** A document with its clause, which may be empty. */
  public static Basis of(String key, String clause) {
    return new Basis(key, "", clause, "", "");
  }

  /** Whether it says all that another one says. */
  public boolean covers(Basis other) {
    boolean samePlace = other.clause.isEmpty() || other.clause.equals(clause);
    return key.equals(other.key) && samePlace && other.obtained.isEmpty();
  }
}
