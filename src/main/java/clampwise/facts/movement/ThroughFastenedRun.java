package clampwise.facts.movement;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The longest run of sheet that is screwed through to its supports.
 *
 * @param runM its length [m]
 * @param mostM longest that screws and holes take [m]
 */
public record ThroughFastenedRun(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String covering,
    String plane,
    double runM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
