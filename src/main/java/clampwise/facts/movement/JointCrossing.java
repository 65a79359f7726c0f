package clampwise.facts.movement;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far a field is split where an expansion joint of the building runs through the roof.
 *
 * @param crossing the modules at the joint, in words
 * @param jointM where the joint lies along the eave [m]
 * @param gapM smallest gap over the joint, 0 where a module lies across it [m]; no more than the
 *     gap that is asked for
 * @param leastM gap that splits an array [m]
 */
public record JointCrossing(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String crossing,
    double jointM,
    double gapM,
    double leastM,
    Optional<Limit> limitFrom)
    implements Fact {}
