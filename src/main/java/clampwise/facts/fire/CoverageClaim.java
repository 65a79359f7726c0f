package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The share of the roof in plan that the drawings say is covered, held against the computed one.
 *
 * @param claimedShare share stated
 * @param computedShare share computed
 * @param differenceShare how far they are apart, without sign
 * @param mostShare how far they may be apart for rounding
 * @param onSlopeShare what areas on the slope over the plan area of the roof would give
 * @param arrayM2 plan area of all modules [m²]
 * @param roofM2 plan area of the whole roof [m²]
 */
public record CoverageClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    double claimedShare,
    double computedShare,
    double differenceShare,
    double mostShare,
    double onSlopeShare,
    double arrayM2,
    double roofM2,
    Optional<Limit> limitFrom)
    implements Fact {}
