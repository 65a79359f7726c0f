package clampwise.facts.weight;

import clampwise.facts.layout.Layout;
import clampwise.job.Building;
import clampwise.job.Flag;
import clampwise.source.Span;
import java.util.Optional;

/** What the job says of the building's members and bracing. */
record Members(Layout layout, Optional<Building> building) {

  static final String UNKNOWN =
      "neither an engineer's check of the members nor the loads of their design are given (building: members-checked)";

  static Members of(Layout layout) {
    return new Members(layout, layout.job().building());
  }

  /** Whether an engineer has checked them; empty if that could not be read. */
  Optional<Boolean> checked() {
    return layout.job().unreadable().touches("building", "members-checked")
        ? Optional.empty()
        : Optional.of(building.flatMap(Building::membersChecked).filter(Flag::value).isPresent());
  }

  /** Whether there is nothing to screen because an engineer's check stands instead. */
  boolean isCheckEnough() {
    return checked().orElse(false);
  }

  boolean isCollateralLost() {
    return layout.job().unreadable().touches("building", "collateral-load");
  }

  /** Where the members' values would be written. */
  Span at() {
    return layout.job().at("building");
  }
}
