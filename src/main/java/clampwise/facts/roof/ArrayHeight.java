package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The height of a field's upper side above the roof, held against the height up to which the wind
 * method for panels parallel to the roof holds.
 *
 * @param field its name
 * @param from how the height was got
 * @param heightM height h2 [m]
 * @param mostM largest height [m]
 */
public record ArrayHeight(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String from,
    double heightM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
