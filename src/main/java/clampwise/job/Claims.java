package clampwise.job;

import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import java.util.Optional;

/** What the drawings state, to be compared with what is computed. */
public record Claims(
    @Doc("Width of the wind zones drawn along the edges.") Optional<Length> zoneWidth,
    @Doc("Modules counted on the drawing.") Optional<Count> modules,
    @Doc("Attachments counted on the drawing.") Optional<Count> attachments,
    @Doc("Mid clamps counted on the drawing.") Optional<Count> midClamps,
    @Doc("End clamps counted on the drawing.") Optional<Count> endClamps,
    @Doc("Factor for continuity over the supports that the calculation uses.")
        Optional<Factor> continuityFactor,
    @Doc("Whether the calculation counts roof live load under the array.")
        Optional<Flag> liveLoadUnderArray,
    @Doc("Path of the permit that the submittal asks for.") Optional<Choice<Claims.Path>> path) {

  /** A path to a permit. */
  public enum Path {
    EXPEDITED,
    ENGINEERED
  }
}
