package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A module beside a flue whose appliance states no clearance.
 *
 * @param module its name, or {@code no module}
 * @param obstruction name of the flue
 * @param distanceM distance between the two [m]
 * @param leastM distance asked for [m]
 * @param shortM what is missing [m]
 */
public record FlueDistance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    String obstruction,
    double distanceM,
    double leastM,
    double shortM,
    Optional<Limit> limitFrom)
    implements Fact {}
