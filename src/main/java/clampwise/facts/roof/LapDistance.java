package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far a line of attachments stays from the nearest end lap.
 *
 * @param lapM where that lap lies up the slope [m]
 * @param distanceM distance from it [m]
 * @param leastM least distance [m]
 * @param moveM how much further from the lap it has to go [m]
 */
public record LapDistance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String part,
    String attachment,
    double lapM,
    double distanceM,
    double leastM,
    double moveM,
    Optional<Limit> limitFrom)
    implements Fact {}
