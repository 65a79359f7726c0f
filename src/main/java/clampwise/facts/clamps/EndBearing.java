package clampwise.facts.clamps;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How much of the body below an end clamp lies past the frame's edge, where it is least.
 *
 * @param attachment name of that attachment
 * @param part its seam clamp or rib bracket
 * @param module module that the end clamp holds
 * @param pastM body past the edge [m]
 * @param leastM least that the end clamp needs [m]
 */
public record EndBearing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String attachment,
    String part,
    String module,
    double pastM,
    double leastM,
    Optional<Limit> limitFrom)
    implements Fact {}
