package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The electrical code that the strings are drawn to, held against the one adopted at the site.
 *
 * @param own the code with the strings
 * @param site the code of the site
 * @param alike whether both are one
 */
public record CodeNamed(
    Subject subject, Span at, Unit shown, String own, String site, boolean alike) implements Fact {}
