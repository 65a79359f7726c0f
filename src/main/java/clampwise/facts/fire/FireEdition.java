package clampwise.facts.fire;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The fire rule set that a layout follows, held against the code in force at the site.
 *
 * @param rules rule set that is followed
 * @param inForce rule set in force
 */
public record FireEdition(
    Subject subject, Subject cause, Span at, Unit shown, String rules, String inForce)
    implements Fact {}
