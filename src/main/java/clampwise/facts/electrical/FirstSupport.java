package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The distance of the first support of a cable from a box, held against what the code allows.
 *
 * @param distanceM distance [m]
 * @param mostM largest distance allowed [m]
 */
public record FirstSupport(
    Subject subject, Span at, Unit shown, double distanceM, double mostM, Optional<Limit> limitFrom)
    implements Fact {}
