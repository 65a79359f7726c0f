package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The pressure equalisation factor that the calculation uses, held against that of a field.
 *
 * @param field its name
 * @param claimed factor that is used [-]
 * @param readAt the area at which it was read, in words; empty if it is not stated
 * @param computed factor of one module, or 1 where there is no credit [-]
 * @param acceptable the least that may be stated for it [-]
 * @param from what the computed factor comes from
 */
public record EqualisationClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    double claimed,
    String readAt,
    double computed,
    double acceptable,
    String from)
    implements Fact {}
