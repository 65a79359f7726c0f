package clampwise.facts.accuracy;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far the modules of a column may be off up the slope beside what its mid clamps take up.
 *
 * @param subject the field
 * @param cause the field and what adds up
 * @param column the longest column in words
 * @param modules its modules, or those between two marks
 * @param toleranceM how far a module may be off beside the one before [m]
 * @param likelyM likely stack [m]
 * @param worstM stack of the worst case [m]
 * @param slackM how much wider than drawn a gap may be under the mid clamp [m]
 * @param clamp the mid clamp
 * @param marks rows to set from a mark, in words
 */
public record ColumnStack(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String column,
    int modules,
    double toleranceM,
    double likelyM,
    double worstM,
    double slackM,
    String clamp,
    String marks)
    implements Fact {}
