package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How many modules of a field are on strings, held against how many it has.
 *
 * @param field its name
 * @param strung modules on strings
 * @param placed modules on the roof
 * @param strings how the strings make that number, in words
 */
public record StringTally(
    Subject subject, Span at, Unit shown, String field, int strung, int placed, String strings)
    implements Fact {}
