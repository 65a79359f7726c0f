package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;

/**
 * Screws of carbon steel, bare or galvanised, in the air of the site.
 *
 * @param cause the metal, which all parts with screws of it share
 * @param units units of lengths of time
 * @param parts the parts with screws of this metal, in words
 * @param metal their metal
 * @param air class of the air
 * @param airFrom how the class is known
 * @param airRank 1 for C1 to 6 for CX
 * @param most worst class that the metal is used in
 * @param mostRank its rank
 * @param eaten what the air takes: steel or its zinc
 * @param lossCoatingM how much of it on a side while the array stands [m]
 * @param timeS how long the array stands [s]
 */
public record ScrewInAir(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String parts,
    String metal,
    String air,
    String airFrom,
    int airRank,
    String most,
    int mostRank,
    String eaten,
    double lossCoatingM,
    double timeS)
    implements Fact {}
