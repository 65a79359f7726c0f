package clampwise.facts.accuracy;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The two diagonals of a field, as measured.
 *
 * @param field its name
 * @param differenceM difference of the two [m]
 * @param mostM largest difference [m]
 * @param squareM diagonal that both have once the field is square [m]
 */
public record DiagonalPair(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    double differenceM,
    double mostM,
    double squareM,
    Optional<Limit> limitFrom)
    implements Fact {}
