package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The clips on the list, held against the length of the runs.
 *
 * @param runs length of the runs and where it is from, in words
 * @param spacing spacing of the clips, in words
 * @param listed clips on the list
 * @param least clips that the runs need
 */
public record ClipCount(
    Subject subject, Span at, Unit shown, String runs, String spacing, int listed, int least)
    implements Fact {}
