package clampwise.facts.documents;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * What a drawing declares so that one can measure from it.
 *
 * @param sheet its number or name
 * @param kind what it is, in words
 * @param declaration what is asked for, in words
 * @param declared whether the drawing has it
 */
public record DrawingBasics(
    Subject subject,
    Span at,
    Unit shown,
    String sheet,
    String kind,
    String declaration,
    boolean declared,
    Optional<Limit> limitFrom)
    implements Fact {

  /** What a drawing lacks is added in one go. */
  @Override
  public Subject cause() {
    return Subject.of("documents.sheets." + sheet, "basics");
  }
}
