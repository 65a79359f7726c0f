package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many planes of a dwelling's roof have a pathway from their lowest edge to the ridge.
 *
 * @param widthM width of a pathway [m]
 * @param planes planes that have one, by name
 * @param found how many they are
 * @param least how many there must be
 * @param cure what would have to go for one more, in words
 */
public record PathwayPlanes(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    double widthM,
    String planes,
    int found,
    double least,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
