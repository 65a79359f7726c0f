package clampwise.facts.fire;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The fire type of a module, held against the types that the listing names.
 *
 * @param module name of the module type
 * @param type its fire type
 * @param types types that the listing names
 * @param listed whether its type is among them
 */
public record ModuleFireType(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String type,
    String types,
    boolean listed)
    implements Fact {}
