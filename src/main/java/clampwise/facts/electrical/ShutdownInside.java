package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What holds inside the array boundary after a rapid shutdown.
 *
 * @param inside what the job says, in words
 * @param serves whether that serves on this roof under the edition
 * @param why why it does not, in words
 */
public record ShutdownInside(
    Subject subject, Span at, Unit shown, String inside, boolean serves, String why)
    implements Fact {}
