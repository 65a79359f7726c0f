package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * Years that the covering has left, against those that the array is to stand.
 *
 * @param ageS its age [s]
 * @param expectedS its life from new [s]
 * @param from how that life is known
 * @param leftS what is left of it, less than nothing once it is over [s]
 * @param arrayS life of the array [s]
 */
public record RoofLife(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    double ageS,
    double expectedS,
    String from,
    double leftS,
    double arrayS,
    Optional<Limit> limitFrom)
    implements Fact {}
