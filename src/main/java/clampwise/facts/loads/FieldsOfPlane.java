package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.ZoneLookup;
import java.util.Optional;
import java.util.function.Supplier;

/** What the fields of one plane have in common, worked out for the first of them that asks. */
final class FieldsOfPlane {

  private final PlaneLayout plane;
  private Optional<PlaneModules> modules = Optional.empty();
  private Optional<ZoneLookup> zones = Optional.empty();
  private Optional<Outcome<FieldSnow>> snow = Optional.empty();

  FieldsOfPlane(PlaneLayout plane) {
    this.plane = plane;
  }

  synchronized PlaneModules modules() {
    PlaneModules known = modules.orElseGet(() -> new PlaneModules(plane));
    modules = Optional.of(known);
    return known;
  }

  synchronized ZoneLookup zones() {
    ZoneLookup known = zones.orElseGet(() -> new ZoneLookup(plane.zones()));
    zones = Optional.of(known);
    return known;
  }

  /** The snow on the plane, which is the same whichever of its fields asks. */
  synchronized Outcome<FieldSnow> snow(Supplier<Outcome<FieldSnow>> ofAnyField) {
    Outcome<FieldSnow> known = snow.orElseGet(ofAnyField);
    snow = Optional.of(known);
    return known;
  }
}
