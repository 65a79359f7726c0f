package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How many pathways a dwelling has on its street or driveway side.
 *
 * @param widthM width of a pathway [m]
 * @param planes planes on that side, by name
 * @param found how many of them have a pathway
 * @param least how many must have one
 * @param cure what would have to go, in words
 */
public record StreetPathways(
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
