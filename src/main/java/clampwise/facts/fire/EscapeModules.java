package clampwise.facts.fire;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The modules below an escape and rescue opening.
 *
 * @param opening its name
 * @param plane the plane below it
 * @param modules the modules, in short
 * @param count how many they are
 * @param most how many there may be, 0
 * @param cure what would have to go, in words
 */
public record EscapeModules(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String opening,
    String plane,
    String modules,
    int count,
    int most,
    String cure)
    implements Fact {}
