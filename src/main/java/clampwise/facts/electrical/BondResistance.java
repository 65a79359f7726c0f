package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The resistance from frame to lug, held against the least of bonding tests.
 *
 * @param resistanceOhm resistance [Ω]
 * @param mostOhm highest resistance [Ω]
 */
public record BondResistance(
    Subject subject,
    Span at,
    Unit shown,
    double resistanceOhm,
    double mostOhm,
    Optional<Limit> limitFrom)
    implements Fact {}
