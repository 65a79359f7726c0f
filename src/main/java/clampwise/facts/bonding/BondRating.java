package clampwise.facts.bonding;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a part that ties frames together or to ground is rated for bonding.
 *
 * @param subject where the part is used
 * @param cause the part
 * @param at where it was chosen
 * @param shown there is no number
 * @param kind mid clamp, jumper or lug
 * @param part name of the part
 * @param rated whether it is rated for bonding
 * @param fitting parts of that kind that are rated, if there are any
 */
public record BondRating(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String kind,
    String part,
    boolean rated,
    Optional<String> fitting)
    implements Fact {}
