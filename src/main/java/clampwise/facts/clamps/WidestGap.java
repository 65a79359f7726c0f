package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The gap between rows beside the widest that the mid clamp holds.
 *
 * @param subject the field and the clamp
 * @param at where the gap was written
 * @param shown unit of the gap
 * @param units units of lengths that were written in one of their own
 * @param field name of the field
 * @param clamp name of the mid clamp
 * @param gapM gap between the rows [m]
 * @param mostM widest gap the clamp holds [m]
 * @param fitting what to use instead
 */
public record WidestGap(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String clamp,
    double gapM,
    double mostM,
    Optional<String> fitting)
    implements Fact {}
