package clampwise.facts.clamps;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How many modules of a row find a seam in their clamp zone on both halves of their edges.
 *
 * @param subject the row
 * @param cause the start of the row
 * @param at where the start is written
 * @param shown unit of the start
 * @param row the row in words
 * @param lines what its seams, ribs or crests are called
 * @param modules modules of the row
 * @param inZone those with a seam in the zone on both halves
 * @param zone the clamp zone in words
 * @param startM left corner of the row's first column [m along]
 * @param better the best starts, or what would help instead
 */
public record RowPhase(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String row,
    String lines,
    int modules,
    int inZone,
    String zone,
    double startM,
    String better)
    implements Fact {}
