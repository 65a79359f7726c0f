package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How wide the path between two array sections is for letting smoke out.
 *
 * @param plane name of the plane
 * @param between two modules on either side of it
 * @param widthM its least width [m]
 * @param leastM least width asked for [m]
 * @param widenM how much is missing [m]
 * @param where what the least width depends on, in words
 */
public record SmokeAisle(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String between,
    double widthM,
    double leastM,
    double widenM,
    String where,
    Optional<Limit> limitFrom)
    implements Fact {}
