package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Where connectors lie.
 *
 * @param place where they lie, in words
 * @param offRoof whether they are off the roof
 */
public record ConnectorPlace(Subject subject, Span at, Unit shown, String place, boolean offRoof)
    implements Fact {}
