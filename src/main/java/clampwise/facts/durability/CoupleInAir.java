package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A pair of metals on the sheet that is accepted in mild air only, in the air of the site.
 *
 * @param part the part and its metal
 * @param base the sheet and its metal
 * @param air class of the air
 * @param needsPad whether such pairs are kept apart in this air
 * @param isolated whether something keeps them apart
 * @param differenceV difference of their anodic indices [V]
 */
public record CoupleInAir(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String base,
    String air,
    boolean needsPad,
    boolean isolated,
    double differenceV,
    Optional<Limit> limitFrom)
    implements Fact {}
