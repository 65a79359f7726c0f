package clampwise.job;

import clampwise.job.Quantity.Current;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Torque;
import java.util.Optional;

/** A mid clamp or an end clamp: it grips module frames. */
public record ModuleClamp(
    @Doc("Frame heights it grips.") Optional<LengthRange> frameHeight,
    @Doc("Gap it sets between two frames; none for end clamps.") Optional<Length> gap,
    @Doc("Widest gap it can hold; none for end clamps.") Optional<Length> gapAtMost,
    @Doc("Largest difference of two frames' heights it can hold.")
        Optional<Length> heightDifferenceAtMost,
    @Doc("How far it reaches over a frame, at the gap it sets.") Optional<Length> gripDepth,
    @Doc("Movement of the frames that it takes up at each joint.") Optional<Length> slack,
    @Doc("Whether frames slide in it as they grow.") Optional<Flag> slides,
    @Doc("Least distance from the frame's edge to the end of the body below, for end clamps.")
        Optional<Length> edgeDistanceAtLeast,
    @Doc("Whether it is rated to bond the frames it grips.") Optional<Flag> bonding,
    @Doc("Largest series fuse its bond was tested for.") Optional<Current> seriesFuseAtMost,
    @Doc("Whether it bonds again after it was loosened.") Optional<Flag> bondsAgain,
    @Doc("Tightening torque.") Optional<Torque> torque,
    @Doc("Mass of one.") Optional<Mass> mass,
    @Doc("Metal of the clamp.") Optional<Choice<Metal>> metal,
    @Doc("Its bolt.") Optional<Screws> screws) {}
