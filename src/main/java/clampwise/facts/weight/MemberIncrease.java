package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How much a field raises the gravity load of the roof members under it.
 *
 * @param checked whether an engineer has checked them with the array
 * @param loadPa dead load of the array [Pa]
 * @param designPa gravity load that the members were designed for [Pa]
 * @param increaseShare the one over the other
 * @param mostShare increase that needs no check
 */
public record MemberIncrease(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    boolean checked,
    double loadPa,
    double designPa,
    double increaseShare,
    double mostShare,
    Optional<Limit> limitFrom)
    implements Fact {}
