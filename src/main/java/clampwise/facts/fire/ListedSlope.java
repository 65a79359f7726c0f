package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The slope of a plane with modules, held against the roof slopes of the fire listing.
 *
 * @param plane its name
 * @param slopeRad its slope [rad]
 * @param steepRad slope from which a roof is steep [rad]
 * @param slopes slopes that the listing holds for
 * @param covered whether the slope is among them
 */
public record ListedSlope(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String plane,
    double slopeRad,
    double steepRad,
    String slopes,
    boolean covered,
    Optional<Limit> limitFrom)
    implements Fact {}
