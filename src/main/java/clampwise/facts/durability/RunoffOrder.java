package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What runs off a thing on the roof onto frames below it.
 *
 * @param obstruction its name
 * @param metal its metal
 * @param harmful whether water off this metal eats the frames
 * @param below modules in its way down the slope
 * @param most how many such modules there may be
 * @param first the nearest of them, or {@code none}
 */
public record RunoffOrder(
    Subject subject,
    Span at,
    Unit shown,
    String obstruction,
    String metal,
    boolean harmful,
    int below,
    int most,
    String first)
    implements Fact {}
