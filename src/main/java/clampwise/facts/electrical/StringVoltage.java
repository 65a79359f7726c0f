package clampwise.facts.electrical;

import clampwise.calc.trail.Chain;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The open-circuit voltage of a string on the coldest morning, held against the least of all that
 * limits it.
 *
 * @param string its name
 * @param inSeries modules in series
 * @param module type of its modules
 * @param lowest lowest temperature, as written
 * @param method how the cold was taken: the maker's coefficient, or the table
 * @param voltageV voltage [V]
 * @param limitBy what sets the limit
 * @param limitV highest voltage allowed [V]
 * @param fitting longest string that fits, in words
 */
public record StringVoltage(
    Subject subject,
    Span at,
    Unit shown,
    String string,
    int inSeries,
    String module,
    String lowest,
    String method,
    double voltageV,
    String limitBy,
    double limitV,
    String fitting,
    Optional<Chain> chain,
    Optional<Limit> limitFrom)
    implements Fact {}
