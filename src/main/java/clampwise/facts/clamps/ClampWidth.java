package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The gap between rows beside the gap that the mid clamp needs between two frames.
 *
 * @param subject the field and the clamp
 * @param at where the gap was written
 * @param shown unit of the gap
 * @param units units of lengths that were written in one of their own
 * @param field name of the field
 * @param clamp name of the mid clamp
 * @param gapM gap between the rows [m]
 * @param leastM gap the clamp sets between two frames [m]
 * @param fitting what to use instead
 */
public record ClampWidth(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String clamp,
    double gapM,
    double leastM,
    Optional<String> fitting)
    implements Fact {}
