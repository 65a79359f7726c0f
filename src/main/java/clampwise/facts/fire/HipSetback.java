package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far the array on a plane stays from a hip or valley of a dwelling.
 *
 * @param plane its name
 * @param edge hip or valley
 * @param across the plane on the other side
 * @param module the module nearest to it
 * @param distanceM distance of that module from the edge, on the slope [m]
 * @param leastM least distance; 0 where the other side is bare [m]
 * @param moveM how much is missing [m]
 * @param cure what would have to go, in words
 */
public record HipSetback(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String edge,
    String across,
    String module,
    double distanceM,
    double leastM,
    double moveM,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
