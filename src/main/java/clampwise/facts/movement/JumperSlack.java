package clampwise.facts.movement;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The slack of a jumper, held against the movement of the frames that it joins.
 *
 * @param part name of the jumper
 * @param from frame at one end, where it has to give most
 * @param to frame at the other
 * @param movementM movement of the two against each other [m]
 * @param slackM spare length of the jumper [m]
 * @param leastM slack it needs [m]
 * @param fitting what to use instead
 */
public record JumperSlack(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String from,
    String to,
    double movementM,
    double slackM,
    double leastM,
    Optional<Limit> limitFrom,
    Optional<String> fitting)
    implements Fact {}
