package clampwise.facts.fire;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The fire class that the listing of modules and mount gives, held against the class the roof
 * needs.
 *
 * @param listed class of the listing
 * @param required class that is needed
 * @param listedRank 3 for A, 2 for B, 1 for C
 * @param requiredRank the same of the class that is needed
 */
public record RoofFireClass(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String listed,
    String required,
    int listedRank,
    int requiredRank)
    implements Fact {}
