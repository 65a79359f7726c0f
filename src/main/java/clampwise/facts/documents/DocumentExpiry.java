package clampwise.facts.documents;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How long a letter, report or warranty holds beside the day it is handed in.
 *
 * @param sheet its number or name
 * @param kind what it is, in words
 * @param until last day on which it holds
 * @param handedIn day on which the package is handed in
 * @param daysOver days between them, negative while it holds
 * @param mostDays most of them
 */
public record DocumentExpiry(
    Subject subject,
    Span at,
    Unit shown,
    String sheet,
    String kind,
    String until,
    String handedIn,
    int daysOver,
    int mostDays)
    implements Fact {}
