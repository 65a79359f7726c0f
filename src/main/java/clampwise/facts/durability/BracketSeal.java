package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a bracket is sealed to its sheet.
 *
 * @param part name of the bracket
 * @param sealed whether butyl or a pad lies under it
 */
public record BracketSeal(
    Subject subject, Subject cause, Span at, Unit shown, String part, boolean sealed)
    implements Fact {}
