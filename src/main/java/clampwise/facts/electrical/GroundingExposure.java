package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a small grounding conductor is exposed to damage.
 *
 * @param circuit its name
 * @param exposed whether it runs without a raceway
 * @param sizeWireM2 cross-section [m²]
 * @param leastWireM2 least cross-section of an exposed one [m²]
 */
public record GroundingExposure(
    Subject subject,
    Span at,
    Unit shown,
    String circuit,
    boolean exposed,
    double sizeWireM2,
    double leastWireM2,
    Optional<Limit> limitFrom)
    implements Fact {}
