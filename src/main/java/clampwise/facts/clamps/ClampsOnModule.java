package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many clamps hold a module.
 *
 * @param subject the module
 * @param cause the schedule of its field
 * @param at where the schedule is written
 * @param module name of the module
 * @param clamps clamps on both supported edges
 * @param least fewest clamps it needs
 * @param weakestEdge the supported edge with fewer clamps
 * @param onWeakestEdge clamps on that edge
 * @param perEdgeLeast fewest clamps a supported edge needs
 * @param limitFrom the limit used where the module's manual states no number
 */
public record ClampsOnModule(
    Subject subject,
    Subject cause,
    Span at,
    String module,
    int clamps,
    int least,
    String weakestEdge,
    int onWeakestEdge,
    int perEdgeLeast,
    Optional<Limit> limitFrom)
    implements Fact {

  @Override
  public Unit shown() {
    return Unit.NUMBER;
  }
}
