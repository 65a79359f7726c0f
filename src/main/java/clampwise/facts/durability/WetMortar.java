package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * When mortar is laid beside a sheet.
 *
 * @param covering name of the covering
 * @param metal its metal
 * @param laidAfter whether it is laid after the roof
 * @param attacked whether the metal is one that wet mortar eats
 */
public record WetMortar(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String covering,
    String metal,
    boolean laidAfter,
    boolean attacked)
    implements Fact {}
