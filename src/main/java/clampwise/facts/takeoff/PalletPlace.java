package clampwise.facts.takeoff;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Where a pallet stands while it is emptied.
 *
 * @param panel the roof covering
 * @param modules modules on it
 * @param massKg its mass, with the modules [kg]
 * @param onSheetAlone whether it stands on sheet that nothing but purlins carries
 */
public record PalletPlace(
    Subject subject,
    Span at,
    Unit shown,
    String panel,
    int modules,
    double massKg,
    boolean onSheetAlone)
    implements Fact {}
