package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A wind pressure that the drawings state for a zone, held against the largest on a module there.
 *
 * @param field its field
 * @param zone wind zone
 * @param direction {@code uplift} or {@code pressure}
 * @param level level of what is stated: strength or service
 * @param module the module that takes the largest pressure
 * @param claimedPa stated pressure [Pa]
 * @param computedPa computed pressure at the same level [Pa]
 * @param acceptablePa the least that may be stated for it [Pa]
 * @param minimumPa least design pressure of the standard at that level [Pa]
 * @param mostPa the most that may be stated for it before a designer should look [Pa]
 */
public record PressureClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String zone,
    String direction,
    String level,
    String module,
    double claimedPa,
    double computedPa,
    double acceptablePa,
    double minimumPa,
    double mostPa)
    implements Fact {}
