package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The area of module that the calculation gives one attachment, held against the largest of a
 * field.
 *
 * @param field its name
 * @param line {@code inner line} or {@code edge line}
 * @param rows what such a line carries of its rows
 * @param attachment the attachment that carries most
 * @param claimedM2 stated area [m²]
 * @param part what the stated area is of the computed one, in words
 * @param computedM2 area that attachment carries [m²]
 * @param acceptableM2 the least that may be stated for it [m²]
 */
public record TributaryClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String line,
    String rows,
    String attachment,
    double claimedM2,
    String part,
    double computedM2,
    double acceptableM2)
    implements Fact {}
