package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether something starts a rapid shutdown.
 *
 * @param named whether an initiator is named
 */
public record ShutdownStart(Subject subject, Span at, Unit shown, boolean named) implements Fact {}
