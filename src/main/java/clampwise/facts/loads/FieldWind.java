package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Pressures;
import clampwise.facts.layout.PlacedModule;
import java.util.Optional;

/** Wind on the modules of one field, by the standard of its site. */
interface FieldWind {

  /** Where a module lies in the wind. */
  Place place(PlacedModule module);

  /** Pressures of a module with all lines, those of its place in the array first. */
  default Outcome<Pressures> show(PlacedModule module, Work work) {
    return on(place(module), work);
  }

  /** The method for modules parallel to the roof, if the standard has one. */
  default Optional<PanelMethod> parallel() {
    return Optional.empty();
  }

  /** Pressures of a place, at the level of the standard, with all lines from the wind speed on. */
  Outcome<Pressures> on(Place place, Work work);

  /**
   * Pressures on the roof itself as if there were no array, at the level of the standard.
   *
   * @param zone wind zone
   * @param spanM how far the sheet spans along its seams [m]
   * @param widthM distance between its seams [m]
   */
  default Outcome<Pressures> bare(String zone, double spanM, double widthM, Work work) {
    return new Outcome.NotApplicable<>(
        "wind on the bare roof by this standard is not part of this version");
  }
}
