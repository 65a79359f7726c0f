package clampwise.facts.durability;

import clampwise.calc.trail.Chain;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * Zinc on a sheet, against what the weather takes until the array comes down.
 *
 * @param covering name of the covering
 * @param coating its designation
 * @param air class of the air
 * @param timeS age of the covering and life of the array together [s]
 * @param lossCoatingM zinc lost on a side in that time [m]
 * @param hasCoatingM zinc on a side when new [m]
 * @param lastsS time until it is gone, from new [s]
 * @param course when that is, from today
 * @param cure what is left to do
 */
public record ZincLife(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String covering,
    String coating,
    String air,
    double timeS,
    double lossCoatingM,
    double hasCoatingM,
    double lastsS,
    String course,
    String cure,
    Optional<Chain> chain)
    implements Fact {}
