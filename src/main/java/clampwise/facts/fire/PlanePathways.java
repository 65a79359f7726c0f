package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many pathways serve a plane with an array.
 *
 * @param plane its name
 * @param widthM width of a pathway [m]
 * @param where where they may lie, in words
 * @param found how many there are, no more counted than are asked for
 * @param least how many there must be
 * @param cure what would have to go, in words
 */
public record PlanePathways(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    double widthM,
    String where,
    int found,
    double least,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
