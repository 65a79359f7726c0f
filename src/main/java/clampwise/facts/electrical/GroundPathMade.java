package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the metal roof serves as the grounding conductor of a circuit.
 *
 * @param circuit its name
 * @param byRoof whether it does
 */
public record GroundPathMade(Subject subject, Span at, Unit shown, String circuit, boolean byRoof)
    implements Fact {}
