package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Venting cutouts along the paths between array sections.
 *
 * @param shortM short side of a cutout [m]
 * @param leastShortM least short side [m]
 * @param longM long side [m]
 * @param leastLongM least long side [m]
 * @param everyM distance from one to the next [m]
 * @param mostEveryM most distance [m]
 * @param alternating whether they lie on alternating sides
 */
public record VentCutouts(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    double shortM,
    double leastShortM,
    double longM,
    double leastLongM,
    double everyM,
    double mostEveryM,
    boolean alternating,
    Optional<Limit> limitFrom)
    implements Fact {}
