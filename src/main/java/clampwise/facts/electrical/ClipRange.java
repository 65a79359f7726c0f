package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The diameter of the cables, held against what their clip holds.
 *
 * @param clip name of the clip
 * @param cableM outer diameter of the cable [m]
 * @param minM smallest diameter that the clip holds [m]
 * @param maxM largest diameter that the clip holds [m]
 * @param nearestBoundM the one of both that is nearer [m]
 * @param fitting what to use instead
 */
public record ClipRange(
    Subject subject,
    Span at,
    Unit shown,
    String clip,
    double cableM,
    double minM,
    double maxM,
    double nearestBoundM,
    Optional<String> fitting)
    implements Fact {}
