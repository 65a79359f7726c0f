package clampwise.job;

import clampwise.job.Quantity.Current;
import clampwise.job.Quantity.WireSize;
import java.util.Optional;

/** A circuit of the array with its overcurrent protection and its grounding conductor. */
public record Circuit(
    @Doc("Whether it is dc or ac.") Optional<Choice<Circuit.Kind>> kind,
    @Doc("String that feeds it, by name.") Optional<Text> string,
    @Doc("How many of these strings are joined in it; one when left out.")
        Optional<Count> inParallel,
    @Doc("Rating of its overcurrent device.") Optional<Current> overcurrent,
    @Doc("Whether it has an overcurrent device.") Optional<Flag> fused,
    @Doc("Rating that its grounding conductor was sized to, where it has no device.")
        Optional<Current> assumedDevice,
    @Doc("Size of its conductors.") Optional<WireSize> conductor,
    @Doc("Size it needs, where its conductors were raised against voltage drop.")
        Optional<WireSize> conductorNeeded,
    @Doc("Its equipment grounding conductor; that of a dc circuit is the one at the lugs.")
        Optional<Circuit.Grounding> grounding) {

  /** Kind of current. */
  public enum Kind implements Choice.Spelt {
    DC,
    AC;

    @Override
    public String word() {
      return this == DC ? "dc" : "ac";
    }
  }

  /** An equipment grounding conductor. */
  public record Grounding(
      @Doc("Its size.") Optional<WireSize> size,
      @Doc("Its metal.") Optional<Choice<ConductorMetal>> metal,
      @Doc("Whether it is exposed to damage or protected in a raceway.")
          Optional<Choice<Route>> route,
      @Doc("What carries the fault current: a wire, or the metal roof.")
          Optional<Choice<Path>> path,
      @Doc("Whether it was raised for voltage drop.") Optional<Flag> raisedForDrop,
      @Doc("What covers its metal.") Optional<Choice<Cover>> cover,
      @Doc("Where it lies.") Optional<Choice<Electrical.Place>> lies) {}

  /** What covers the metal of a conductor. */
  public enum Cover {
    BARE,
    TINNED,
    INSULATED
  }

  /** Metal of a conductor. */
  public enum ConductorMetal {
    COPPER,
    ALUMINIUM
  }

  /** Where a conductor runs. */
  public enum Route {
    EXPOSED,
    RACEWAY
  }

  /** What serves as grounding conductor. */
  public enum Path {
    WIRE,
    ROOF
  }
}
