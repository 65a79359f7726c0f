package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far a line of attachments stays from the cut ends of the panels.
 *
 * @param attachment the attachment nearest to an end
 * @param end lower or upper
 * @param distanceM its distance from that end, negative beyond it [m]
 * @param leastM least distance [m]
 * @param moveM how much further from the end it has to go [m]
 */
public record EndDistance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String attachment,
    String end,
    double distanceM,
    double leastM,
    double moveM,
    Optional<Limit> limitFrom)
    implements Fact {}
