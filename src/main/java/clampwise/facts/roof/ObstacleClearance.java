package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far a module beside an obstruction stays from it.
 *
 * @param module the module, or {@code no module} where none is nearer than the clearance
 * @param obstruction its name
 * @param gapM distance between the two [m]
 * @param clearanceM distance to be kept [m]
 * @param moveM how much is missing [m]
 */
public record ObstacleClearance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String obstruction,
    double gapM,
    double clearanceM,
    double moveM)
    implements Fact {}
