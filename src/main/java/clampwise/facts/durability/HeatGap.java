package clampwise.facts.durability;

import clampwise.calc.trail.Chain;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The gap under the modules of a field, against the one that keeps them cool enough.
 *
 * @param field name of the field
 * @param module its module type
 * @param hottestC temperature its listing allows, 98th percentile [°C]
 * @param reachedC temperature at this gap, 98th percentile [°C]
 * @param gapM gap between roof and underside [m]
 * @param leastM gap that keeps the modules cool enough [m]
 * @param goodM gap that does so and lets air through [m]
 */
public record HeatGap(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String module,
    double hottestC,
    double reachedC,
    double gapM,
    double leastM,
    double goodM,
    Optional<Chain> chain)
    implements Fact {}
