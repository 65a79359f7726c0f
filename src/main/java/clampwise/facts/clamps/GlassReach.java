package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far a clamp reaches over the frame of a module type, beside the width of the frame's lip.
 *
 * @param clamp kind and name of the clamp
 * @param type name of the module type
 * @param depthM reach of the clamp [m]
 * @param lipM width of the lip, up to the glass [m]
 * @param fitting what to use instead
 */
public record GlassReach(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String clamp,
    String type,
    double depthM,
    double lipM,
    Optional<String> fitting)
    implements Fact {}
