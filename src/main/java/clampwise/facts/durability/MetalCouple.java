package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Two metals that touch, in the three steps that hold in any air: pairs that nobody lets touch, the
 * difference of their potentials, the areas.
 *
 * @param part the part and its metal
 * @param base what it lies on, and the metal of that
 * @param never whether the pair is one that nobody lets touch
 * @param differenceV difference of their anodic indices [V]
 * @param mostV difference allowed in this air [V]
 * @param smallActive whether the part is the small one and the one that goes
 * @param accepted whether the trade accepts the pair, or the part is small and the nobler one
 * @param isolated whether something keeps them apart
 * @param cure what puts it right
 */
public record MetalCouple(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String base,
    boolean never,
    double differenceV,
    double mostV,
    boolean smallActive,
    boolean accepted,
    boolean isolated,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
