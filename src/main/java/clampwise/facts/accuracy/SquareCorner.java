package clampwise.facts.accuracy;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * A corner of a field, measured by its sides and the diagonal between them.
 *
 * @param units units of lengths that are not shown in a small one
 * @param field its name
 * @param offsetM how far the side up the slope leans over its length [m]
 * @param overM length of that side [m]
 * @param mostM most of it [m]
 * @param rightM diagonal of a right angle [m]
 */
public record SquareCorner(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    double offsetM,
    double overM,
    double mostM,
    double rightM,
    Optional<Limit> limitFrom)
    implements Fact {}
