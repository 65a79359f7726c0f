package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Where of the profile a bracket is screwed.
 *
 * @param part name of the bracket
 * @param place part of the profile
 * @param inPan whether that is the pan, where water runs
 */
public record ScrewPlace(
    Subject subject, Subject cause, Span at, Unit shown, String part, String place, boolean inPan)
    implements Fact {}
