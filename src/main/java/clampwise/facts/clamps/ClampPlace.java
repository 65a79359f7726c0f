package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A clamp that was chosen for one attachment, and how many modules meet there.
 *
 * @param subject the attachment
 * @param at where the clamp was chosen
 * @param attachment name of the attachment
 * @param clamp the clamp in words
 * @param modules modules that meet there
 * @param madeFor modules such a clamp holds
 * @param rightKind the clamp that belongs there
 */
public record ClampPlace(
    Subject subject,
    Span at,
    String attachment,
    String clamp,
    int modules,
    int madeFor,
    String rightKind)
    implements Fact {

  @Override
  public Unit shown() {
    return Unit.NUMBER;
  }
}
