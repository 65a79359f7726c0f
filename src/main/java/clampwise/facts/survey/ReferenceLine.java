package clampwise.facts.survey;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far the eave that a field is set out from runs off square to the seams.
 *
 * @param subject the field
 * @param at where the reference of the first row was written
 * @param shown unit of the measured deviation
 * @param units units of lengths that were written in one of their own
 * @param field name of the field
 * @param offsetM deviation of the eave from square [m]
 * @param overM length it was measured over [m]
 * @param mostM largest deviation over that length [m]
 * @param limit where the largest deviation comes from
 */
public record ReferenceLine(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    double offsetM,
    double overM,
    double mostM,
    Limit limit)
    implements Fact {

  @Override
  public Optional<Limit> limitFrom() {
    return Optional.of(limit);
  }
}
