package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The voltage outside the array boundary after a rapid shutdown.
 *
 * @param voltageV voltage that is reached [V]
 * @param mostV highest voltage allowed [V]
 */
public record ShutdownVoltage(
    Subject subject, Span at, Unit shown, double voltageV, double mostV, Optional<Limit> limitFrom)
    implements Fact {}
