package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether cables touch the roof.
 *
 * @param touch whether they do
 */
public record CableOnRoof(Subject subject, Span at, Unit shown, boolean touch) implements Fact {}
