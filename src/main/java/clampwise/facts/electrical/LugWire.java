package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The grounding conductor in a lug, held against the conductors that the lug takes.
 *
 * @param lug name of the lug
 * @param circuit circuit of the conductor
 * @param sizeWireM2 cross-section of the conductor [m²]
 * @param minWireM2 smallest that the lug takes [m²]
 * @param maxWireM2 largest that the lug takes [m²]
 * @param nearestWireM2 the one of both that is nearer [m²]
 * @param fitting lugs that take it, in words
 */
public record LugWire(
    Subject subject,
    Span at,
    Unit shown,
    String lug,
    String circuit,
    double sizeWireM2,
    double minWireM2,
    double maxWireM2,
    double nearestWireM2,
    Optional<String> fitting)
    implements Fact {}
