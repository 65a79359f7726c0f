package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a sample of the set screws is checked again.
 *
 * @param rechecked whether it is
 */
public record SetScrewRecheck(Subject subject, Span at, Unit shown, boolean rechecked)
    implements Fact {}
