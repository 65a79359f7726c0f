package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What seals under the heads of a bracket's screws.
 *
 * @param part name of the bracket
 * @param washer what lies under the heads
 * @param seals whether that seals
 */
public record ScrewWasher(
    Subject subject, Subject cause, Span at, Unit shown, String part, String washer, boolean seals)
    implements Fact {}
