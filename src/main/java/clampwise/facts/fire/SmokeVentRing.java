package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How much room modules leave beside a smoke vent.
 *
 * @param vent its name
 * @param where where the room is asked for, in words
 * @param freeM the room there, no more than is asked for [m]
 * @param leastM least room [m]
 * @param cure what would have to go, in words
 */
public record SmokeVentRing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String vent,
    String where,
    double freeM,
    double leastM,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
