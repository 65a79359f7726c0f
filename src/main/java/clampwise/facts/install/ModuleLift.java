package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What brings the modules up.
 *
 * @param by its word
 * @param byLadder whether people carry them up a ladder
 */
public record ModuleLift(Subject subject, Span at, Unit shown, String by, boolean byLadder)
    implements Fact {}
