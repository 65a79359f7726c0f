package clampwise.facts.takeoff;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Pallets of the quotation, held against the modules.
 *
 * @param stated pallets of the quotation
 * @param least pallets that the modules fill
 * @param packing modules on a pallet and where that is from, in words
 */
public record PalletCount(
    Subject subject, Span at, Unit shown, int modules, int stated, int least, String packing)
    implements Fact {}
