package clampwise.facts.documents;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The date on a document beside the day it is handed in.
 *
 * @param sheet its number or name
 * @param kind what it is, in words
 * @param dated date on it
 * @param handedIn day on which the package is handed in
 * @param daysAfter days from handing in to its date, negative if it is older
 * @param mostDays most of them
 */
public record DocumentDate(
    Subject subject,
    Span at,
    Unit shown,
    String sheet,
    String kind,
    String dated,
    String handedIn,
    int daysAfter,
    int mostDays)
    implements Fact {}
