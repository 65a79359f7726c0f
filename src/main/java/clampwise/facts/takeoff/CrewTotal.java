package clampwise.facts.takeoff;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The time that the quotation gives a crew for all of the work, held against that of one phase.
 *
 * @param modules modules on the drawing
 * @param statedS time for all work [s]
 * @param placementS time for laying the modules alone [s]
 * @param eachS time for laying one module [s]
 */
public record CrewTotal(
    Subject subject,
    Span at,
    Unit shown,
    int modules,
    double statedS,
    double placementS,
    double eachS,
    Optional<Limit> limitFrom)
    implements Fact {}
