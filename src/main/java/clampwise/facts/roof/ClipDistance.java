package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far a line of attachments that may not sit over clips stays from the nearest clip line.
 *
 * @param distanceM distance from that line [m]
 * @param leastM least distance [m]
 * @param moveM how much further from the clips it has to go [m]
 */
public record ClipDistance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String attachment,
    double distanceM,
    double leastM,
    double moveM,
    Optional<Limit> limitFrom)
    implements Fact {}
