package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far a module reaches over an obstruction.
 *
 * @param module the module, or {@code no module}
 * @param obstruction its name
 * @param kind what it is
 * @param coverM the smaller extent of the part it covers [m]
 * @param mostM how much it may cover, 0 [m]
 */
public record ObstacleCover(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String obstruction,
    String kind,
    double coverM,
    double mostM)
    implements Fact {}
