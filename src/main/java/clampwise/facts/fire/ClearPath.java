package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The clear paths across a flat plane with an array in one direction.
 *
 * @param plane its name
 * @param direction up the slope or along the eave
 * @param widthM width of a path [m]
 * @param found paths found, no more counted than are asked for
 * @param least paths that there must be
 * @param cure what would have to go, in words
 */
public record ClearPath(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String direction,
    double widthM,
    int found,
    int least,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
