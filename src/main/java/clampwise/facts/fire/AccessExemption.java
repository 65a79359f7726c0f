package clampwise.facts.fire;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a job leaves the access rules out.
 *
 * @param rules the rule set
 * @param exempt whether it does
 * @param why why, in its own words
 * @param cure what has to be shown
 */
public record AccessExemption(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String rules,
    boolean exempt,
    String why,
    String cure)
    implements Fact {}
