package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Thickness;
import clampwise.job.Quantity.Torque;
import java.util.List;
import java.util.Optional;

/** A clamp that grips a standing seam. */
public record SeamClamp(
    @Doc("Seam folds it is made for.") List<Text> profiles,
    @Doc("Seam heights it fits.") Optional<LengthRange> seamHeight,
    @Doc("Seam widths it fits.") Optional<LengthRange> seamWidth,
    @Doc("Thinnest sheet it may grip.") Optional<Thickness> thicknessAtLeast,
    @Doc("What it was tested on, with the loads it may carry there.") List<Tested> tested,
    @Doc("Height of the module's underside above the pan.") Optional<Length> standoff,
    @Doc("Least distance to a cut end of the panel or an end lap.") Optional<Length> fromPanelEnd,
    @Doc("Length of its body along the seam or rib.") Optional<Length> bodyLength,
    @Doc("Whether it may sit over a clip.") Optional<Flag> overClip,
    @Doc("Tightening torque of its set screws.") Optional<Torque> torque,
    @Doc("Metal of the body.") Optional<Choice<Metal>> metal,
    @Doc("Mass of one, with its screws.") Optional<Mass> mass,
    @Doc("Its screws, where they meet the sheet.") Optional<Screws> screws,
    @Doc("Whether a pad keeps its body apart from the sheet.") Optional<Flag> isolated)
    implements RoofAttachment {

  @Override
  public boolean fixesPanel() {
    return false;
  }
}
