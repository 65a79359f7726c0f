package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Protection of dc circuits against arcs.
 *
 * @param named whether a device is named
 * @param voltageV highest voltage of the strings in the cold, 0 if it is not known and does not
 *     matter [V]
 * @param fromV voltage from which the code asks for it [V]
 */
public record ArcProtection(
    Subject subject,
    Span at,
    Unit shown,
    boolean named,
    double voltageV,
    double fromV,
    Optional<Limit> limitFrom)
    implements Fact {}
