package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the wind loads of a field take credit for pressure that equalises through its gaps.
 *
 * @param field its name
 * @param taken whether they do
 * @param why the conditions of the method that fail, with both numbers
 */
public record EqualisationCredit(
    Subject subject, Subject cause, Span at, Unit shown, String field, boolean taken, String why)
    implements Fact {}
