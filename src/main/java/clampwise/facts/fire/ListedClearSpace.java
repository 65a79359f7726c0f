package clampwise.facts.fire;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;

/**
 * The clear space under the modules of a field, held against that of the fire listing.
 *
 * @param field its name
 * @param spaceM clear space under its modules [m]
 * @param minM least space of the listing [m]
 * @param maxM most space of the listing [m]
 * @param nearestBoundM the bound it is nearest to [m]
 */
public record ListedClearSpace(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    double spaceM,
    double minM,
    double maxM,
    double nearestBoundM)
    implements Fact {}
