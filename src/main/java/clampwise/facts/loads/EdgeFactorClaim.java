package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The edge factor that the calculation uses, held against the largest of a field.
 *
 * @param field its name
 * @param claimed factor that is used for every module [-]
 * @param computed largest factor of its modules [-]
 * @param exposed how many modules take it
 * @param modules the modules that take it
 * @param why what makes the first of them exposed
 */
public record EdgeFactorClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    double claimed,
    double computed,
    int exposed,
    String modules,
    String why)
    implements Fact {}
