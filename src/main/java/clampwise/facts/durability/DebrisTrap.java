package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The gap under a field, where leaves and animals may gather.
 *
 * @param field name of the field
 * @param trees whether trees shed on it
 * @param kept whether a screen closes the gap and yearly cleaning is agreed
 * @param gapM gap under the modules [m]
 * @param leastM gap that leaves wash out of [m]
 */
public record DebrisTrap(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    boolean trees,
    boolean kept,
    double gapM,
    double leastM,
    Optional<Limit> limitFrom)
    implements Fact {}
