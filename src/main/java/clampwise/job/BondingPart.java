package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Torque;
import clampwise.job.Quantity.WireSize;
import java.util.Optional;

/** A jumper or a grounding lug. */
public record BondingPart(
    @Doc("Whether it is rated for bonding.") Optional<Flag> bonding,
    @Doc("Free length between its ends, for jumpers.") Optional<Length> length,
    @Doc("Spare length for movement, for jumpers.") Optional<Length> slack,
    @Doc("Smallest conductor it takes, for lugs.") Optional<WireSize> wireAtLeast,
    @Doc("Largest conductor it takes, for lugs.") Optional<WireSize> wireAtMost,
    @Doc("Metal or plating at the contact.") Optional<Text> finish,
    @Doc("Tightening torque.") Optional<Torque> torque) {}
