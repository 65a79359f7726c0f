package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import java.util.Optional;

/** A clip that holds cables to a frame. */
public record WireClip(
    @Doc("How many cables it holds.") Optional<Count> cables,
    @Doc("Thickness of the flange it clips to.") Optional<LengthRange> flange,
    @Doc("Cable diameters it holds.") Optional<LengthRange> cable,
    @Doc("Free length to the roof it leaves.") Optional<Length> clear,
    @Doc("Mass of one.") Optional<Mass> mass) {}
