package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How far what the first row is set out from is out of square to the seams.
 *
 * @param field name of the field
 * @param reference eave or seams
 * @param offsetM deviation, zero for seams [m]
 * @param overM length it was measured over [m]
 * @param mostM largest deviation over that length [m]
 */
public record RowReference(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String reference,
    double offsetM,
    double overM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
