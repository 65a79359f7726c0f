package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The spacing of the supports of cables, held against what the code allows.
 *
 * @param wire size of the cables
 * @param spacingM spacing [m]
 * @param mostM widest spacing allowed [m]
 */
public record CableSupport(
    Subject subject,
    Span at,
    Unit shown,
    String wire,
    double spacingM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
