package clampwise.facts.movement;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far a floating panel moves at its free end, held against the travel of its clips.
 *
 * @param fixedAt where the run is fixed
 * @param temperatures between which temperatures it moves, in words
 * @param lengthM length from the fixed point to the free end [m]
 * @param movementM movement of the free end [m]
 * @param travelM how far a clip lets the panel slide, one way [m]
 * @param fittingM longest length that the clips allow [m]
 */
public record PanelTravel(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String covering,
    String fixedAt,
    String temperatures,
    double lengthM,
    double movementM,
    double travelM,
    double fittingM,
    Optional<Limit> limitFrom)
    implements Fact {}
