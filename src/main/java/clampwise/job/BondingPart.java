package clampwise.job;

import clampwise.job.Quantity.Current;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Torque;
import clampwise.job.Quantity.WireSize;
import java.util.List;
import java.util.Optional;

/** A jumper or a grounding lug. */
public record BondingPart(
    @Doc("Whether it is rated for bonding.") Optional<Flag> bonding,
    @Doc("Free length between its ends, for jumpers.") Optional<Length> length,
    @Doc("Spare length for movement, for jumpers.") Optional<Length> slack,
    @Doc("Size of its conductor, for jumpers.") Optional<WireSize> size,
    @Doc("Largest series fuse it was tested for.") Optional<Current> seriesFuseAtMost,
    @Doc("Whether it bonds again after it was loosened.") Optional<Flag> bondsAgain,
    @Doc("Whether it is listed for wet places, for lugs.") Optional<Flag> wetRated,
    @Doc("Metals of conductors it takes, for lugs; copper when left out.")
        List<Choice<Circuit.ConductorMetal>> takes,
    @Doc("Smallest conductor it takes, for lugs.") Optional<WireSize> wireAtLeast,
    @Doc("Largest conductor it takes, for lugs.") Optional<WireSize> wireAtMost,
    @Doc("Metal or plating at the contact.") Optional<Text> finish,
    @Doc("Tightening torque.") Optional<Torque> torque,
    @Doc("Mass of one.") Optional<Mass> mass) {}
