package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A count the drawings state, held against the layout.
 *
 * @param what what is counted
 * @param claimed number stated
 * @param counted number in the layout
 * @param difference how many the statement is off, without sign
 */
public record CountClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String what,
    int claimed,
    int counted,
    int difference)
    implements Fact {}
