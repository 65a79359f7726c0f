package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What a sheet is marked with.
 *
 * @param covering name of the covering
 * @param metal its metal
 * @param marking what it is marked with
 * @param graphite whether that is graphite
 * @param bareActive whether the metal lies bare and is one that graphite eats
 */
public record GraphiteMarks(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String covering,
    String metal,
    String marking,
    boolean graphite,
    boolean bareActive)
    implements Fact {}
