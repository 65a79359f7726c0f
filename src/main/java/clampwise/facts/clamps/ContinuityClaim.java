package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The factor for continuity that the calculation uses, held against the module edges of a field.
 *
 * @param model how the edges stand on their clamps, in words
 * @param module module with the edge that governs
 * @param claimed factor of the calculation
 * @param computed greatest reaction over its tributary load, to two decimals
 */
public record ContinuityClaim(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String field,
    String model,
    String module,
    double claimed,
    double computed)
    implements Fact {}
