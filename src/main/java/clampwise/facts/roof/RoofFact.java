package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether a fact about a covering was confirmed.
 *
 * @param covering name of the covering
 * @param key which fact
 * @param assumed whether the job marks it as assumed
 */
public record RoofFact(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String covering,
    String key,
    boolean assumed)
    implements Fact {}
