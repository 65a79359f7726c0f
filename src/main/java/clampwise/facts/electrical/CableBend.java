package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The tightest bend of the cables, held against their diameter.
 *
 * @param radiusM inner radius [m]
 * @param diameterM outer diameter of the cable [m]
 * @param leastM smallest radius [m]
 */
public record CableBend(
    Subject subject,
    Span at,
    Unit shown,
    double radiusM,
    double diameterM,
    double leastM,
    Optional<Limit> limitFrom)
    implements Fact {}
