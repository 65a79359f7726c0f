package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far an array section extends from path to path.
 *
 * @param plane name of its plane
 * @param block two of its corner modules, in words
 * @param direction along the eave or up the slope
 * @param extentM its extent that way [m]
 * @param mostM most it may extend [m]
 * @param aisleM width of the paths that divide sections [m]
 * @param cure what would have to go for such a path, in words
 */
public record ArrayBlock(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String block,
    String direction,
    double extentM,
    double mostM,
    double aisleM,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
