package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether who gives the roof's warranty has agreed to the array.
 *
 * @param inForce whether a warranty may be in force
 * @param agreed whether the letter is there
 */
public record WarrantyLetter(Subject subject, Span at, Unit shown, boolean inForce, boolean agreed)
    implements Fact {}
