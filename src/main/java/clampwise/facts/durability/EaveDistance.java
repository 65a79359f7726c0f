package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A module above an eave with a gutter.
 *
 * @param module its name
 * @param distanceM distance to the eave [m]
 * @param leastM distance asked for [m]
 * @param shortM what is missing [m]
 */
public record EaveDistance(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String module,
    double distanceM,
    double leastM,
    double shortM,
    Optional<Limit> limitFrom)
    implements Fact {}
