package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How much the arrays raise the weight that the building's bracing holds in an earthquake.
 *
 * @param checked whether an engineer has checked the bracing with the array
 * @param weightN weight of all arrays [N]
 * @param designN weight that the bracing was designed for [N]
 * @param increaseShare the one over the other
 * @param mostShare increase that needs no check
 */
public record LateralIncrease(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    boolean checked,
    double weightN,
    double designN,
    double increaseShare,
    double mostShare,
    Optional<Limit> limitFrom)
    implements Fact {}
