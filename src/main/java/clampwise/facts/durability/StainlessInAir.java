package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The grade of stainless screws in the air of the site.
 *
 * @param cause the grade, which all parts with screws of it share
 * @param parts the parts with screws of this grade, in words
 * @param grade their grade
 * @param air class of the air
 * @param airFrom how the class is known
 * @param airRank 1 for C1 to 6 for CX
 * @param most worst class that the grade is used in
 * @param mostRank its rank
 */
public record StainlessInAir(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String parts,
    String grade,
    String air,
    String airFrom,
    int airRank,
    String most,
    int mostRank)
    implements Fact {}
