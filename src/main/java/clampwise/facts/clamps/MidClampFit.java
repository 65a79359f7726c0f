package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How the frame of a module fits its mid clamp.
 *
 * @param subject the module
 * @param cause the clamp together with the module type
 * @param at where the clamp was chosen
 * @param shown unit of the clamp's range
 * @param units units of lengths that were written in one of their own
 * @param module name of the module
 * @param type name of its module type
 * @param clamp name of the clamp
 * @param frameHeightM height of the frame [m]
 * @param minM lowest frame the clamp grips [m]
 * @param maxM highest frame the clamp grips [m]
 * @param nearestBoundM the end of the range that is nearer to the frame height [m]
 * @param fitting clamps that grip this frame, if there are any
 */
public record MidClampFit(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String module,
    String type,
    String clamp,
    double frameHeightM,
    double minM,
    double maxM,
    double nearestBoundM,
    Optional<String> fitting)
    implements Fact {}
