package clampwise.facts.survey;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The surveyed seam under a field that is furthest beyond what it may be off the drawing, or else
 * comes nearest to it.
 *
 * @param subject the field
 * @param at where the position of the seam was written
 * @param shown unit of that position
 * @param field name of the field
 * @param seam seam, rib or crest with its number
 * @param driftM distance from its place on the drawing [m]
 * @param mostM largest distance at this seam that needs no new layout [m]
 * @param limitFrom the limit of practice, unless a clamp has less room than that
 */
public record SeamDrift(
    Subject subject,
    Span at,
    Unit shown,
    String field,
    String seam,
    double driftM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
