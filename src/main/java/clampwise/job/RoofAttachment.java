package clampwise.job;

import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Thickness;
import java.util.List;
import java.util.Optional;

/** What seam clamps and rib brackets have in common: they hold the array to the sheet. */
public sealed interface RoofAttachment permits SeamClamp, RibBracket {

  /** Names of the seam folds or rib profiles it is made for. */
  List<Text> profiles();

  /** Thinnest sheet it may hold to. */
  Optional<Thickness> thicknessAtLeast();

  /** What it was tested on. */
  List<Tested> tested();

  /** Height of the module's underside above the pan. */
  Optional<Length> standoff();

  /** Least distance to a cut end of the panel or an end lap. */
  Optional<Length> fromPanelEnd();

  /** Length of its body along the seam or rib. */
  Optional<Length> bodyLength();

  /** Whether it may sit over a clip. */
  Optional<Flag> overClip();

  /** Mass of one, with its screws. */
  Optional<Mass> mass();

  /** Metal of its body. */
  Optional<Choice<Metal>> metal();

  /** Its screws, where they meet the sheet. */
  Optional<Screws> screws();

  /** Whether a pad keeps its body apart from the sheet. */
  Optional<Flag> isolated();

  /** Whether it pins the panel to the structure, so that the panel cannot slide there. */
  boolean fixesPanel();
}
