package clampwise.facts.durability;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.SheetCoating;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Flag;
import clampwise.job.Metal;
import clampwise.job.Panel;
import clampwise.job.SurfaceMetal;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sheets under the array as other metals meet them. */
record Sheets(Weathering weathering) {

  /** Planes with modules, one for each covering. */
  List<PlaneLayout> underModules() {
    List<PlaneLayout> planes = new ArrayList<>();
    for (PlaneLayout plane : weathering.layout().planes()) {
      if (!plane.fields().isEmpty() && planes.stream().noneMatch(other -> isSame(plane, other))) {
        planes.add(plane);
      }
    }
    return planes;
  }

  private static boolean isSame(PlaneLayout one, PlaneLayout other) {
    return one.panelName().equals(other.panelName());
  }

  /** The surface of a covering; steel by its coating. */
  Outcome<Surface> of(PlaneLayout plane) {
    Optional<Metal> metal = plane.panel().flatMap(Panel::metal).map(written -> written.value());
    if (metal.isEmpty()) {
      return new NotApplicable<>(lacks(plane, "the metal of ", "metal"));
    }
    return metal.get() == Metal.STEEL
        ? coated(plane)
        : new Result<>(surface(plane, SurfaceMetal.of(metal.get())));
  }

  private Outcome<Surface> coated(PlaneLayout plane) {
    Optional<Text> written = plane.panel().flatMap(Panel::coating);
    if (written.isEmpty()) {
      return new NotApplicable<>(lacks(plane, "the coating of ", "coating"));
    }
    return SheetCoating.of(written.get().value())
        .<Outcome<Surface>>map(coating -> new Result<>(surface(plane, metal(coating))))
        .orElseGet(
            () ->
                new NotApplicable<>(
                    "coating " + written.get() + " of " + plane.panelName() + " is not known"));
  }

  private static SurfaceMetal metal(SheetCoating coating) {
    return coating.isZinc() ? SurfaceMetal.GALVANISED_STEEL : SurfaceMetal.AL_ZN_STEEL;
  }

  private static Surface surface(PlaneLayout plane, SurfaceMetal metal) {
    return new Surface(metal, "the sheet of " + plane.panelName());
  }

  private String lacks(PlaneLayout plane, String what, String key) {
    return weathering.lacks(what + plane.panelName(), "panels", plane.panelName(), key);
  }

  /** Whether paint lies over the metal; a covering that says nothing is bare. */
  static boolean isPainted(PlaneLayout plane) {
    return plane.panel().flatMap(Panel::painted).filter(Flag::value).isPresent();
  }
}
