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
 * @param type module type that weighs most on its area
 * @param hardware mass of clamps, attachments and wires for each module, in words
 * @param loadPa dead load [Pa]
 * @param mostPa load that the path admits [Pa]
 */
public record ExpeditedLoad(
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
