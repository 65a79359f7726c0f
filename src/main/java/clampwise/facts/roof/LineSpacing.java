package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The widest spacing between neighbouring attachments along one line within one wind zone, held
 * against the spacing allowed there.
 *
 * @param left attachment at its left end
 * @param right attachment at its right end
 * @param zone the more severe zone of the two
 * @param allowedM allowed spacing [m]
 * @param pattern which seams would keep the allowed spacing, if any pattern does
 */
public record LineSpacing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    int line,
    String left,
    String right,
    String zone,
    double spacingM,
    double allowedM,
    Optional<String> pattern)
    implements Fact {}
