package clampwise.facts.movement;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The longest run of module frames that hang together without a break.
 *
 * @param direction which way it runs, in words
 * @param tie what holds the frames together, in words
 * @param from module at its start
 * @param to module at its end
 * @param slides whether the frames slide in their clamps
 * @param runM its length [m]
 * @param mostM length after which a break is asked for [m]
 */
public record ModuleRun(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String direction,
    String tie,
    String from,
    String to,
    boolean slides,
    double runM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
