package clampwise.facts.takeoff;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The phases of the work for which the quotation gives a time.
 *
 * @param stated phases with a time, in words
 * @param left how many phases that the drawing has work for have none
 * @param names those phases
 * @param leftS time that they usually take [s]
 */
public record CrewPhases(
    Subject subject, Span at, Unit shown, String stated, int left, String names, double leftS)
    implements Fact {}
