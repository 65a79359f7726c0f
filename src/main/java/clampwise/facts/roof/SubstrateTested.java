package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a part was tested on what the sheet rests on.
 *
 * @param testedOn the substrates it was tested on
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
    boolean tested)
    implements Fact {}
