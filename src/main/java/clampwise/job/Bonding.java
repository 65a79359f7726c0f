package clampwise.job;

import java.util.List;
import java.util.Optional;

/** How the frames are tied to each other and to ground. */
public record Bonding(
    @Doc("Jumper used where none is named.") Optional<Text> jumper,
    @Doc("Lug used where none is named.") Optional<Text> lug,
    @Doc("Jumpers between frames.") List<Bonding.Jumper> jumpers,
    @Doc("Lugs that join a frame to the equipment grounding conductor.") List<Bonding.Lug> lugs,
    @Doc(
            "Whether the drawings say that a temporary jumper bridges a module before it is taken out.")
        Optional<Flag> temporaryJumpers,
    @Doc("Mid clamps, jumpers and lugs that were clamped before and are used again, by name.")
        List<Text> reused) {

  /** One jumper, or a row of them. */
  public record Jumper(
      @Doc("Module it starts at, such as A.R1C1.") Optional<Text> from,
      @Doc("Module it ends at.") Optional<Text> to,
      @Doc("Field whose neighbouring columns it ties, one jumper for each pair.")
          Optional<Text> field,
      @Doc("Row the jumpers of a field lie in; the lowest when left out.") Optional<Count> row,
      @Doc("Jumper, by name.") Optional<Text> part) {}

  /** One grounding lug. */
  public record Lug(
      @Doc("Module it sits on, such as A.R1C1.") Text on,
      @Doc("Lug, by name.") Optional<Text> part) {}
}
