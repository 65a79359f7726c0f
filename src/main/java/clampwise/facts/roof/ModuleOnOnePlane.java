package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far a module reaches over an edge where the roof goes on: a ridge, hip, valley, step or
 * expansion joint.
 *
 * @param module its name, or how many modules of a field lie inside
 * @param edge kind of the edge it reaches over
 * @param overM how far, 0 inside [m]
 * @param mostM how far it may, 0 [m]
 */
public record ModuleOnOnePlane(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String edge,
    double overM,
    double mostM)
    implements Fact {}
