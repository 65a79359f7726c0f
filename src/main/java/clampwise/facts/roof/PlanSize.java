package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A size of a roof plane in plan beside that of its building.
 *
 * @param plane its name
 * @param direction {@code along its eave} or {@code from eave to ridge}
 * @param planM size of the plane in plan [m]
 * @param size which size of the building it is held against, in words
 * @param buildingM that size [m]
 * @param key where that size is written
 * @param overhangsM overhangs that are allowed for [m]
 * @param mostM size of the building and overhangs together [m]
 */
public record PlanSize(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String plane,
    String direction,
    double planM,
    String size,
    double buildingM,
    String key,
    double overhangsM,
    double mostM,
    Optional<Limit> limitFrom)
    implements Fact {}
