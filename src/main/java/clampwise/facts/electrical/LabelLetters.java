package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The height of the letters of the rapid-shutdown label.
 *
 * @param lettersM height [m]
 * @param leastM least height [m]
 */
public record LabelLetters(
    Subject subject, Span at, Unit shown, double lettersM, double leastM, Optional<Limit> limitFrom)
    implements Fact {}
