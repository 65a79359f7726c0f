package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The distance from one gap between modules to the next, held against the wind method's.
 *
 * @param field its field
 * @param module the module whose side is longest
 * @param type its module type
 * @param spacingM distance from gap to gap [m]
 * @param mostM greatest distance for which pressure counts as equalised [m]
 */
public record GapSpacing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String module,
    String type,
    double spacingM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
