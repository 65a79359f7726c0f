package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far modules stay from a roof access hatch.
 *
 * @param hatch its name
 * @param module the module nearest to it
 * @param freeM distance between the two, no more than is asked for [m]
 * @param leastM least distance [m]
 * @param cure what would have to go, in words
 */
public record HatchRing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String hatch,
    String module,
    double freeM,
    double leastM,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
