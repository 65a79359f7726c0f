package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the rapid-shutdown label is reflective.
 *
 * @param reflective whether it is
 */
public record LabelReflects(Subject subject, Span at, Unit shown, boolean reflective)
    implements Fact {}
