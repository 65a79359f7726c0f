package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far the array on a plane stays from an edge of a roof that is no dwelling.
 *
 * @param plane its name
 * @param edge the edge, in words
 * @param module the module nearest to it
 * @param distanceM distance of that module from the edge, on the slope [m]
 * @param leastM least distance [m]
 * @param moveM how much is missing [m]
 * @param where what the least distance depends on, in words
 * @param cure what would have to go, in words
 */
public record PerimeterPath(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String edge,
    String module,
    double distanceM,
    double leastM,
    double moveM,
    String where,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
