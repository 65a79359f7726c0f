package clampwise.job;

import clampwise.job.Quantity.Years;
import java.util.List;
import java.util.Optional;

/** The state of the roof, and what meets it: age, warranty, water, other materials. */
public record Roof(
    @Doc("Age of the covering.") Optional<Years> age,
    @Doc("Life of the covering from new, as its maker or a roofer expects it.")
        Optional<Years> expectedLife,
    @Doc("Years that the array is to stand; a usual number when left out.")
        Optional<Years> arrayLife,
    @Doc("Whether a warranty of the covering is in force.") Optional<Flag> underWarranty,
    @Doc("Whether who gives the warranty has agreed to the array in writing.")
        Optional<Flag> warrantyLetter,
    @Doc("Whether trees stand near enough to shed on the array.") Optional<Flag> treesNear,
    @Doc("Whether a screen closes the gap under the array.") Optional<Flag> debrisScreen,
    @Doc("Whether yearly cleaning is agreed.") Optional<Flag> yearlyCleaning,
    @Doc("Whether the drawings ask that swarf of drilling is taken off the roof.")
        Optional<Flag> swarfRemoved,
    @Doc("What the roof is marked with.") Optional<Choice<Roof.Marking>> marking,
    @Doc("When mortar is laid near the roof.") Optional<Choice<Roof.Masonry>> masonry,
    @Doc("Treated wood that metal rests on; an empty list for none.")
        Optional<List<Roof.TreatedWood>> treatedWood) {

  /** What a roof is marked with. */
  public enum Marking {
    MARKER,
    CHALK,
    GRAPHITE
  }

  /** When mortar is laid. */
  public enum Masonry {
    NONE,
    BEFORE_ROOF,
    AFTER_ROOF
  }

  /** What wood is treated with. */
  public enum Preservative implements Choice.Spelt {
    ACQ,
    CA,
    CCA,
    BORATE,
    NONE;

    @Override
    public String word() {
      boolean short_ = this == ACQ || this == CA || this == CCA;
      return short_ ? name() : name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Wood that metal rests on. */
  public record TreatedWood(
      @Doc("What it is, such as blocking of the hatch.") Text wood,
      @Doc("What it is treated with.") Choice<Preservative> preservative,
      @Doc("Metal that rests on it.") Choice<SurfaceMetal> touches,
      @Doc("Zinc on that metal, such as G185, where it is galvanised.") Optional<Text> coating,
      @Doc("Whether a membrane lies between.") Optional<Flag> barrier) {}
}
