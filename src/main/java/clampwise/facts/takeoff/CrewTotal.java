package clampwise.facts.takeoff;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * The time that the quotation gives a crew for all of the work, held against what all phases
 * usually take.
 *
 * @param units of times that are not written
 * @param modules modules on the drawing
 * @param statedS time for all work [s]
 * @param placementS time for laying the modules alone [s]
 * @param allS usual time of all phases [s]
 * @param leastS the share of it that the stated time must come to [s]
 */
public record CrewTotal(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    int modules,
    double statedS,
    double placementS,
    double allS,
    double leastS,
    Optional<Limit> limitFrom)
    implements Fact {}
