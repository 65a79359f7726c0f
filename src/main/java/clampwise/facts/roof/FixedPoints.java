package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many points hold the worst run of a floating panel against sliding.
 *
 * @param fixedAt where the panel run is fixed by itself
 * @param seam number of the seam that is pinned most often, 0 if none is
 * @param points the run's own fixed point and the attachments that pin it
 * @param most how many points a run may have
 */
public record FixedPoints(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String covering,
    Optional<String> fixedAt,
    int seam,
    int points,
    int most,
    Optional<Limit> limitFrom,
    Optional<String> fitting)
    implements Fact {}
