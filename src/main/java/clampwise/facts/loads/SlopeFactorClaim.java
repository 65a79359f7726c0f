package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The slope factor of the snow load that the calculation uses, held against that of the array.
 *
 * @param field its field
 * @param claimed factor that is used [-]
 * @param curve which curve that factor belongs to, in words
 * @param computed factor of a roof whose array holds the snow, unless the job says it slides [-]
 * @param acceptable the least that may be stated for it [-]
 */
public record SlopeFactorClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    double claimed,
    String curve,
    double computed,
    double acceptable)
    implements Fact {}
