package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a part was tested on what the sheet rests on.
 *
 * @param testedOn the substrates it was tested on
 * @param fitting what to use instead
 */
public record SubstrateTested(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String covering,
    String substrate,
    String testedOn,
    boolean tested,
    Optional<String> fitting)
    implements Fact {}
