package clampwise.facts.accuracy;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The diagonals of a field as measured, beside the one of the layout.
 *
 * @param units units of lengths that are not shown in a small one
 * @param field its name
 * @param squareM diagonal that both have once the field is square [m]
 * @param drawnM diagonal of the layout [m]
 * @param differenceM difference of the two [m]
 * @param mostM largest difference [m]
 * @param larger whether the field on the roof is larger or smaller, in words
 */
public record DrawnDiagonal(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    double squareM,
    double drawnM,
    double differenceM,
    double mostM,
    String larger,
    Optional<Limit> limitFrom)
    implements Fact {}
