package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The size of an equipment grounding conductor, held against what its circuit or code asks for.
 *
 * @param circuit its name
 * @param metal metal of the conductor
 * @param sizeWireM2 cross-section [m²]
 * @param leastWireM2 least cross-section [m²]
 * @param by what it is sized to, in words
 * @param fitting a size that fits the circuit and the place, in words
 */
public record GroundingSize(
    Subject subject,
    Span at,
    Unit shown,
    String circuit,
    String metal,
    double sizeWireM2,
    double leastWireM2,
    String by,
    String fitting,
    Optional<Limit> limitFrom)
    implements Fact {}
