package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * Whether the calculation counts roof live load under a field, beside the room that anybody would
 * have there.
 *
 * @param counted whether it is counted
 * @param clearM clear space between roof and modules [m]
 * @param mostM clear space up to which it may be left out [m]
 */
public record LiveLoadUnder(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    boolean counted,
    double clearM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
