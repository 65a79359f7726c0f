package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Connectors that are plugged into those of a module.
 *
 * @param module type of the module
 * @param own connector of the module
 * @param other connector that is plugged into it
 * @param where where the other one is from
 * @param alike whether both are of one maker and type
 */
public record ConnectorPair(
    Subject subject,
    Span at,
    Unit shown,
    String module,
    String own,
    String other,
    String where,
    boolean alike)
    implements Fact {}
