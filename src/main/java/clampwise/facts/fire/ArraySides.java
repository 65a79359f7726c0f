package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Along how many sides of a plane with an array a pathway runs.
 *
 * @param plane its name
 * @param widthM width of a pathway [m]
 * @param sides sides that are free, in words
 * @param found how many they are
 * @param least how many there must be
 * @param cure what would have to go, in words
 */
public record ArraySides(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    double widthM,
    String sides,
    int found,
    double least,
    String cure,
    Optional<Limit> limitFrom)
    implements Fact {}
