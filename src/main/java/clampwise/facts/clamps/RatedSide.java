package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a module type may be clamped on the side that crosses the seams.
 *
 * @param subject the module type in its field
 * @param at where the orientation was written
 * @param type name of the module type
 * @param orientation how the modules lie
 * @param side side that is clamped
 * @param rows rows of the clamp-zone table for that side
 * @param least rows it needs
 */
public record RatedSide(
    Subject subject, Span at, String type, String orientation, String side, int rows, int least)
    implements Fact {

  @Override
  public Unit shown() {
    return Unit.NUMBER;
  }
}
