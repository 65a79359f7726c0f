package clampwise.facts.weight;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the loads include the snow that the retention of a plane holds back.
 *
 * @param on what the retention is fixed to
 * @param included whether they do
 */
public record RetainedSnow(
    Subject subject, Subject cause, Span at, Unit shown, String plane, String on, boolean included)
    implements Fact {}
