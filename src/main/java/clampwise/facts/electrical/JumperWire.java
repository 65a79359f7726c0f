package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The conductor of a jumper, held against the grounding conductor that its circuit asks for.
 *
 * @param jumper name of the jumper
 * @param circuit circuit that asks for most
 * @param sizeWireM2 cross-section of the jumper [m²]
 * @param leastWireM2 least cross-section [m²]
 * @param fitting what to use instead
 */
public record JumperWire(
    Subject subject,
    Span at,
    Unit shown,
    String jumper,
    String circuit,
    double sizeWireM2,
    double leastWireM2,
    Optional<Limit> limitFrom,
    Optional<String> fitting)
    implements Fact {}
