package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the test sheet asks for the resistance from frame to lug.
 *
 * @param asked whether it does
 */
public record BondTestAsked(Subject subject, Span at, Unit shown, boolean asked) implements Fact {}
