package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.WireSize;
import java.util.Optional;

/** Single-conductor cables under the modules. */
public record Cables(
    @Doc("Size of the conductors.") Optional<WireSize> wire,
    @Doc("Outer diameter.") Optional<Length> outerDiameter,
    @Doc("Widest spacing of the supports.") Optional<Length> supportSpacing,
    @Doc("Distance of the first support from a box or fitting.") Optional<Length> firstSupport,
    @Doc("Clip that holds the cables, by name.") Optional<Text> clip,
    @Doc("How many clips are on the list.") Optional<Count> clips,
    @Doc("Cables side by side in one clip; one when left out.") Optional<Count> together,
    @Doc("Length of all runs; that of all rows of modules when left out.") Optional<Length> runs,
    @Doc("Tightest bend on the drawings, inner radius.") Optional<Length> bendRadius,
    @Doc("Whether cables touch the roof anywhere.") Optional<Flag> touchRoof,
    @Doc("Whether edges that cables pass are guarded.") Optional<Flag> edgesGuarded) {}
