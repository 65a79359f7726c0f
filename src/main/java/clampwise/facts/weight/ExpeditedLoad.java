package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The dead load of a field, held against what the expedited path admits.
 *
 * @param madeOf what it is made of, in words: the module type that weighs most, its hardware
 * @param loadPa dead load [Pa]
 * @param mostPa load that the path admits [Pa]
 */
public record ExpeditedLoad(
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
