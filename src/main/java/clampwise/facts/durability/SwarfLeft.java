package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether swarf of drilling is taken off the roof.
 *
 * @param bracket a bracket that is screwed to the sheet
 * @param removed whether it is
 */
public record SwarfLeft(Subject subject, Span at, Unit shown, String bracket, boolean removed)
    implements Fact {}
