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
 * @param type module type that weighs most on its area
 * @param hardware mass of clamps, attachments and wires for each module, in words
 * @param loadPa dead load [Pa]
 * @param mostPa load above which calculations are asked for [Pa]
 */
public record ArrayLoad(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String type,
    String hardware,
    double loadPa,
    double mostPa,
    Optional<Limit> limitFrom)
    implements Fact {}
