package clampwise.facts.takeoff;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;

/**
 * A pallet on the roof, held against the load that the roof was designed for.
 *
 * @param units of areas and masses
 * @param modules modules on it
 * @param massKg its mass, with the modules [kg]
 * @param areaM2 area over which it is spread [m²]
 * @param pressurePa load on that area [Pa]
 * @param designPa roof live load or snow of the design [Pa]
 * @param needsM2 area over which it would have to be spread [m²]
 */
public record StagedLoad(
    Subject subject,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    int modules,
    double massKg,
    double areaM2,
    double pressurePa,
    double designPa,
    double needsM2)
    implements Fact {}
