package clampwise.facts.electrical;

import clampwise.calc.trail.Chain;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The voltage of a string that the drawings state, held against the computed one.
 *
 * @param string its name
 * @param claimedV stated voltage [V]
 * @param computedV computed voltage [V]
 * @param acceptableV the least that may be stated for it [V]
 * @param method how the cold was taken
 * @param lowest lowest temperature, as written
 */
public record VoltageClaim(
    Subject subject,
    Span at,
    Unit shown,
    String string,
    double claimedV,
    double computedV,
    double acceptableV,
    String method,
    String lowest,
    Optional<Chain> chain,
    Optional<Limit> limitFrom)
    implements Fact {}
