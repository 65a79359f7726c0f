package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The widest straight path from a roof edge to a standpipe or ventilation hatch.
 *
 * @param thing its name
 * @param kind what it is
 * @param plane the plane it stands on
 * @param widthM width of the path, no more than is asked for [m]
 * @param leastM least width [m]
 * @param cure what would have to go, in words
 */
public record StraightPath(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String thing,
    String kind,
    String plane,
    double widthM,
    double leastM,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
