package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The widest spacing along a line of a field, held against what the expedited path admits.
 *
 * @param left attachment at its left end
 * @param right attachment at its right end
 * @param spacingM spacing [m]
 * @param mostM spacing that the path admits [m]
 */
public record ExpeditedSpacing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String left,
    String right,
    double spacingM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
