package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * A size of a rib or crest held against the range a rib bracket fits.
 *
 * @param dimension rib height or rib top width
 * @param nearestBoundM the end of the range nearer to the size [m]
 */
public record RibSizeFit(
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
