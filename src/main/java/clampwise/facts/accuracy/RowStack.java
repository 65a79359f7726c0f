package clampwise.facts.accuracy;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How far the modules of a row may be off along the eave beside what the seams bear.
 *
 * @param subject the row
 * @param cause the field
 * @param row the row in words
 * @param modules modules of the row
 * @param toleranceM how far a module may be off beside the one before [m]
 * @param likelyAt module where the likely stack first exceeds what the seams bear, else where it
 *     comes nearest
 * @param likelyM likely stack there [m]
 * @param likelySlackM what the seams bear there [m]
 * @param worstAt the same for the worst case
 * @param worstM stack of the worst case there [m]
 * @param worstSlackM what the seams bear there [m]
 * @param marks columns to set from a mark, in words
 */
public record RowStack(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String row,
    int modules,
    double toleranceM,
    String likelyAt,
    double likelyM,
    double likelySlackM,
    String worstAt,
    double worstM,
    double worstSlackM,
    String marks)
    implements Fact {}
