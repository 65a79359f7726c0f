package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the clamps of a module's edge hold both of its halves.
 *
 * @param subject the module
 * @param cause the schedule of its field
 * @param at where the edge's first clamp is scheduled
 * @param module name of the module
 * @param edge the edge that is held worse
 * @param clamps clamps on that edge, two or more
 * @param halvesHeld halves of that edge with a clamp
 * @param halvesNeeded halves that need one
 */
public record EdgeHold(
    Subject subject,
    Subject cause,
    Span at,
    String module,
    String edge,
    int clamps,
    int halvesHeld,
    int halvesNeeded)
    implements Fact {

  @Override
  public Unit shown() {
    return Unit.NUMBER;
  }
}
