package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a part was tested on the metal of the sheet.
 *
 * @param testedOn the metals it was tested on
 */
public record MetalTested(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String covering,
    String metal,
    String testedOn,
    boolean tested,
    Optional<String> fitting)
    implements Fact {}
