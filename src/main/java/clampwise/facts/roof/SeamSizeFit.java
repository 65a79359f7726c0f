package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * A size of a seam held against the range a seam clamp grips.
 *
 * @param dimension seam height or seam width
 * @param nearestBoundM the end of the range nearer to the size [m]
 */
public record SeamSizeFit(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String part,
    String covering,
    String dimension,
    double sizeM,
    double minM,
    double maxM,
    double nearestBoundM,
    Optional<String> fitting)
    implements Fact {}
