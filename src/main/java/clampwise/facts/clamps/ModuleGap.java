package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The gap between a module and its neighbour to the right or above.
 *
 * @param subject the module
 * @param cause the gap as the designer set it
 * @param at where it was set
 * @param shown unit of the gap
 * @param module name of the module
 * @param neighbour name of its neighbour
 * @param gapM clear distance between the frames [m]
 * @param leastM least gap [m]
 * @param limit where the least gap comes from
 */
public record ModuleGap(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String neighbour,
    double gapM,
    double leastM,
    Limit limit)
    implements Fact {

  @Override
  public Optional<Limit> limitFrom() {
    return Optional.of(limit);
  }
}
