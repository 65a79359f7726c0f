package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The dead load of a field on the area that it covers.
 *
 * @param madeOf what it is made of, in words: the module type that weighs most, its hardware
 * @param loadPa dead load [Pa]
 * @param mostPa load above which calculations are asked for [Pa]
 */
public record ArrayLoad(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String madeOf,
    double loadPa,
    double mostPa,
    Optional<Limit> limitFrom)
    implements Fact {}
