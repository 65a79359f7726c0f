package clampwise.facts.takeoff;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
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
 * @param standIn which part is listed in place of this one, in words, if one is
 * @param inPlace the same, to go on with after a remedy
 * @param drawnAt where the drawing names the part, if there is such a one; where it lacks it
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
    String standIn,
    String inPlace,
    List<Span> drawnAt,
    String instead,
    Optional<Limit> limitFrom)
    implements Fact {}
