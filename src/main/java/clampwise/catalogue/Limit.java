package clampwise.catalogue;

import clampwise.calc.trail.Source;
import clampwise.units.Unit;

/**
 * A limit of a code or of good practice, as it stands once in the shared data.
 *
 * @param key its name, such as {@code module-gap-least}
 * @param si its value in SI
 * @param unit the unit it is published in
 * @param document document or practice it comes from; a key of the references
 * @param edition edition of the document, empty for practice
 * @param clause clause, table or figure, empty for practice
 * @param obtained how the number was obtained: read, second-hand, common practice, from memory
 * @param validity where it holds
 */
public record Limit(
    String key,
    double si,
    Unit unit,
    String document,
    String edition,
    String clause,
    String obtained,
    String validity) {

  /** Where it comes from, for shown work. */
  public Source source() {
    return new Source(document, edition, clause, obtained, validity);
  }
}
