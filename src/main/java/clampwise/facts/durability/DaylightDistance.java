package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * An attachment beside a skylight or translucent panel.
 *
 * @param attachment its name, or {@code no attachment}
 * @param obstruction name of the skylight or panel
 * @param distanceM distance of its body from it [m]
 * @param leastM distance asked for [m]
 */
public record DaylightDistance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String attachment,
    String obstruction,
    double distanceM,
    double leastM,
    Optional<Limit> limitFrom)
    implements Fact {}
