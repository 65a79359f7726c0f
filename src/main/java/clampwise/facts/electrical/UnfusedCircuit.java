package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The rating that the grounding conductor of a circuit without an overcurrent device was sized to.
 *
 * @param circuit its name
 * @param stated whether a rating is stated
 * @param statedA that rating, 0 where none is stated [A]
 * @param leastA least rating to assume [A]
 */
public record UnfusedCircuit(
    Subject subject,
    Span at,
    Unit shown,
    String circuit,
    boolean stated,
    double statedA,
    double leastA,
    Optional<Limit> limitFrom)
    implements Fact {}
