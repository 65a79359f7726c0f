package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The clear space under a field, held against what the expedited path admits.
 *
 * @param clearM clear space between roof and modules [m]
 * @param mostM clear space that the path admits [m]
 */
public record ExpeditedGap(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    double clearM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
