package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the grounding conductor of a dc circuit was raised for voltage drop.
 *
 * @param circuit its name
 * @param raised whether it was
 */
public record DropOnDc(Subject subject, Span at, Unit shown, String circuit, boolean raised)
    implements Fact {}
