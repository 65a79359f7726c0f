package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The gap under the modules of a field, for air.
 *
 * @param field name of the field
 * @param gapM gap between roof and underside [m]
 * @param leastM gap that lets air through [m]
 */
public record AirGap(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    double gapM,
    double leastM,
    Optional<Limit> limitFrom)
    implements Fact {}
