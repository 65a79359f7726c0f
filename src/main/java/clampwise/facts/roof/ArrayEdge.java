package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far a field stays from an edge of the roof, held against twice its height above the roof.
 *
 * @param field its name
 * @param module its module nearest to the edge
 * @param edge kind of the edge
 * @param heightM height of the modules' upper side above the roof [m]
 * @param distanceM distance of that module from the edge, on the slope [m]
 * @param leastM least distance [m]
 * @param moveM how much is missing [m]
 * @param lower the words for lowering the field instead; empty if its frames are higher than that
 */
public record ArrayEdge(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String module,
    String edge,
    double heightM,
    double distanceM,
    double leastM,
    double moveM,
    String lower,
    Optional<Limit> limitFrom)
    implements Fact {}
