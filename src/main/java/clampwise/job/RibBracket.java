package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Thickness;
import java.util.List;
import java.util.Optional;

/** A bracket that sits on a rib or crest and is screwed there. */
public record RibBracket(
    @Doc("Rib profiles it is made for, by name.") List<Text> profiles,
    @Doc("Rib heights it fits.") Optional<LengthRange> ribHeight,
    @Doc("Widths of the flat on the rib it fits.") Optional<LengthRange> ribTop,
    @Doc("What it bears on.") Optional<Choice<RibBracket.Bearing>> bearsOn,
    @Doc("What its screws hold in.") Optional<Choice<RibBracket.ScrewsInto>> screwsInto,
    @Doc("Thinnest sheet it may be screwed to.") Optional<Thickness> thicknessAtLeast,
    @Doc("What it was tested on, with the loads it may carry there.") List<Tested> tested,
    @Doc("Height of the module's underside above the pan.") Optional<Length> standoff,
    @Doc("Least distance to a cut end of the panel or an end lap.") Optional<Length> fromPanelEnd,
    @Doc("Length of its body along the seam or rib.") Optional<Length> bodyLength,
    @Doc("Whether it may sit over a clip.") Optional<Flag> overClip,
    @Doc("Metal of the body.") Optional<Choice<Metal>> metal,
    @Doc("Mass of one, with its screws.") Optional<Mass> mass,
    @Doc("Its screws, where they meet the sheet.") Optional<Screws> screws,
    @Doc("Whether a pad keeps its body apart from the sheet.") Optional<Flag> isolated,
    @Doc("Whether it is sealed to the sheet with butyl or a pad.") Optional<Flag> sealed)
    implements RoofAttachment {

  /** The part of a rib a bracket bears on. */
  public enum Bearing {
    FLAT,
    FLANK,
    SADDLE
  }

  /** What a bracket's screws hold in. */
  public enum ScrewsInto {
    SHEET,
    PURLIN
  }

  @Override
  public boolean fixesPanel() {
    return screwsInto.filter(into -> into.value() == ScrewsInto.PURLIN).isPresent();
  }
}
