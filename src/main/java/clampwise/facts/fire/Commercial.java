package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlaneLayout;
import java.util.Optional;

/** Asks what fire codes ask of roofs that are no dwellings. */
final class Commercial {

  private final Access access;
  private final Outcome<Coverage> coverage;

  Commercial(Access access, Outcome<Coverage> coverage) {
    this.access = access;
    this.coverage = coverage;
  }

  void ask() {
    Optional<Limit> narrow = access.limit("perimeter-narrow");
    access
        .limit("perimeter-wide")
        .ifPresent(wide -> new Perimeters(access, coverage, wide, narrow.orElse(wide)).ask());
    new Cutouts(access).ask();
    for (PlaneLayout plane : access.arrayPlanes()) {
      aisle().ifPresent(aisle -> sections(plane, aisle));
      if (plane.outline().isPresent()) {
        new RoofPoints(access, coverage, plane).ask();
      }
    }
  }

  /** The path that divides array sections. */
  private Optional<Limit> aisle() {
    return access.limit("smoke-path-vented-width").or(() -> access.limit("clear-path-width"));
  }

  private void sections(PlaneLayout plane, Limit aisle) {
    Sections sections = Sections.of(plane, aisle.si());
    access
        .limit("block-most")
        .ifPresent(
            most -> new ArrayBlocks(access, coverage, most, aisle.si()).ask(plane, sections));
    access
        .limit("smoke-path-width")
        .ifPresent(wide -> new SmokeAisles(access, wide, aisle).ask(plane, sections));
  }
}
