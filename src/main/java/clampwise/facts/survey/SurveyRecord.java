package clampwise.facts.survey;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a survey says in which role somebody measured, and when.
 *
 * @param complete whether it says both
 * @param lacking what it does not say, in words
 */
public record SurveyRecord(Subject subject, Span at, Unit shown, boolean complete, String lacking)
    implements Fact {}
