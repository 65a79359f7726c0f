package clampwise.job;

import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Force;
import clampwise.job.Quantity.Thickness;
import java.util.List;
import java.util.Optional;

/** What an attachment was tested on and what it may carry there. */
public record Tested(
    @Doc("Seam folds or rib profiles of the test; all the part is made for when left out.")
        List<Text> profiles,
    @Doc("Metal of the sheet.") Choice<Metal> metal,
    @Doc("Thinnest sheet of the test.") Optional<Thickness> thickness,
    @Doc("What the sheet rested on; any when left out.") List<Choice<Substrate>> substrates,
    @Doc("Load away from the roof.") Optional<Force> up,
    @Doc("Load toward the roof.") Optional<Force> down,
    @Doc("Load along the seam.") Optional<Force> along,
    @Doc("Whether the loads are allowable, ultimate or design resistances.")
        Optional<Choice<Tested.Basis>> loadsAre,
    @Doc("Safety factor between ultimate and allowable load.") Optional<Factor> safetyFactor,
    @Doc("Resistance factor between ultimate load and design strength.")
        Optional<Factor> resistanceFactor,
    @Doc("How forces across the roof and along the seam add up; linear when left out.")
        Optional<Choice<Tested.Interaction>> interaction,
    @Doc("Number of the test report.") Optional<Text> report) {

  /** How forces across the roof and along the seam use up one attachment together. */
  public enum Interaction {
    NONE,
    LINEAR,
    QUADRATIC
  }

  /** What a tested load means. */
  public enum Basis {
    ALLOWABLE,
    ULTIMATE,
    RESISTANCE
  }
}
