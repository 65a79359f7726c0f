package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What runs off a thing on the roof, or a conductor, onto the sheet and the frames below it.
 *
 * @param obstruction its name
 * @param metal its metal
 * @param eaten sheets and modules in the way of its water that water off this metal eats
 * @param most how many of them there may be
 * @param onto what they are, in words
 * @param cure what to do instead
 */
public record RunoffOrder(
    Subject subject,
    Span at,
    Unit shown,
    String obstruction,
    String metal,
    int eaten,
    int most,
    String onto,
    String cure)
    implements Fact {}
