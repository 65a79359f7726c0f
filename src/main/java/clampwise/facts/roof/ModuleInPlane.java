package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far a module reaches over the open edge of its plane: an eave, a rake or a wall.
 *
 * @param module its name, or how many modules of a field lie inside
 * @param edge kind of the edge it reaches over
 * @param overM how far, 0 inside [m]
 * @param mostM how far it may, 0 [m]
 */
public record ModuleInPlane(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String edge,
    double overM,
    double mostM)
    implements Fact {}
