package clampwise.facts.takeoff;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Mass of the freight of the quotation, held against the parts.
 *
 * @param statedKg mass of the quotation [kg]
 * @param countedKg mass of modules and hardware on the drawing, without spares [kg]
 * @param atLeast that some of it is left out because its mass is not known, in words
 */
public record FreightMass(
    Subject subject, Span at, Unit shown, double statedKg, double countedKg, String atLeast)
    implements Fact {}
