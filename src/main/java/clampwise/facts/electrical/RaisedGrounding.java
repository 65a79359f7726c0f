package clampwise.facts.electrical;

import clampwise.calc.trail.Chain;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The grounding conductor of an ac circuit whose conductors were raised against voltage drop.
 *
 * @param circuit its name
 * @param conductorWireM2 conductors of the circuit [m²]
 * @param neededWireM2 conductors that it needs [m²]
 * @param sizeWireM2 its grounding conductor [m²]
 * @param leastWireM2 the same raised in proportion [m²]
 * @param fitting a size that is large enough, in words
 */
public record RaisedGrounding(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String circuit,
    double conductorWireM2,
    double neededWireM2,
    double sizeWireM2,
    double leastWireM2,
    String fitting,
    Optional<Chain> chain,
    Optional<Limit> limitFrom)
    implements Fact {}
