package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The widest straight path from a roof access hatch to a roof edge.
 *
 * @param hatch its name
 * @param plane the plane it stands on
 * @param widthM width of the path, no more than is asked for [m]
 * @param leastM least width [m]
 * @param cure what would have to go, in words
 */
public record HatchPath(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String hatch,
    String plane,
    double widthM,
    double leastM,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
