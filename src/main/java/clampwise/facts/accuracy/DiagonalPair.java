package clampwise.facts.accuracy;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The two diagonals of a field, as measured.
 *
 * @param units units of lengths that are not shown in a small one
 * @param field its name
 * @param differenceM difference of the two [m]
 * @param mostM largest difference [m]
 * @param squareM diagonal that both have once the field is square [m]
 */
public record DiagonalPair(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    double differenceM,
    double mostM,
    double squareM,
    Optional<Limit> limitFrom)
    implements Fact {}
