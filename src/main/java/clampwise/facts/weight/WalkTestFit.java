package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The deflection of a panel under a person, held against its limit.
 *
 * @param covering name of the covering
 * @param loadN the person [N]
 * @param spanM span between supports [m]
 * @param sagM deflection under the load [m]
 * @param mostM deflection that is admitted [m]
 */
public record WalkTestFit(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String covering,
    double loadN,
    double spanM,
    double sagM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
