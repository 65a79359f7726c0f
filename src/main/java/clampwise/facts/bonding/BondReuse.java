package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a part that was clamped before bonds again.
 *
 * @param subject the part
 * @param at where it is said to be used again
 * @param shown there is no number
 * @param kind mid clamp, jumper or lug
 * @param part name of the part
 * @param again whether it bonds again after it was loosened
 */
public record BondReuse(
    Subject subject, Span at, Unit shown, String kind, String part, boolean again)
    implements Fact {}
