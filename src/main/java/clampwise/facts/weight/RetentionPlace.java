package clampwise.facts.weight;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What the snow retention of a plane is fixed to.
 *
 * @param onModules whether it is fixed to modules
 */
public record RetentionPlace(
    Subject subject, Subject cause, Span at, Unit shown, String plane, boolean onModules)
    implements Fact {}
