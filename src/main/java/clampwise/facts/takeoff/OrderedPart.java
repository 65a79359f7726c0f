package clampwise.facts.takeoff;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A part on the list of the order, held against the drawing.
 *
 * @param part what it is, in words
 * @param listed how many are on the list
 * @param drawn how many the drawing takes
 * @param shortBy how many are missing
 * @param least those drawn with the fewest usual spares
 * @param most those drawn with the most usual spares
 * @param instead what to do about those that are over
 */
public record OrderedPart(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    int listed,
    int drawn,
    int shortBy,
    int least,
    int most,
    String instead,
    Optional<Limit> limitFrom)
    implements Fact {}
