package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The rating of the overcurrent device of a dc circuit, held against the current of its strings.
 *
 * @param circuit its name
 * @param inParallel strings joined in it
 * @param iscA short-circuit current of one [A]
 * @param deviceA rating of the device [A]
 * @param leastA least rating [A]
 */
public record DeviceRating(
    Subject subject,
    Span at,
    Unit shown,
    String circuit,
    int inParallel,
    double iscA,
    double deviceA,
    double leastA,
    Optional<Limit> limitFrom)
    implements Fact {}
