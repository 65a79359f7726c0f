package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The share of the roof that the arrays cover in plan, held against what the expedited path admits.
 *
 * @param arrayM2 plan area of all modules [m²]
 * @param roofM2 plan area of the roof [m²]
 * @param coveredShare the one over the other
 * @param mostShare share that the path admits
 */
public record RoofCoverage(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    double arrayM2,
    double roofM2,
    double coveredShare,
    double mostShare,
    Optional<Limit> limitFrom)
    implements Fact {}
