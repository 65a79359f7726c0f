package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The width of the wind zones drawn along the edges, held against the width computed.
 *
 * @param plane name of the plane
 * @param figure document and figure the width comes from
 * @param claimedM width drawn [m]
 * @param computedM width computed, in plan [m]
 */
public record ZoneWidthClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String figure,
    double claimedM,
    double computedM)
    implements Fact {}
