package clampwise.facts.fire;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.job.Fire.VentOperation;
import clampwise.job.Obstruction.Kind;
import clampwise.units.QuantityPrint;
import java.util.Optional;

/** Measures the paths between array sections, which have to let smoke out. */
final class SmokeAisles {

  private final Access access;
  private final Limit wide;
  private final Limit vented;

  SmokeAisles(Access access, Limit wide, Limit vented) {
    this.access = access;
    this.wide = wide;
    this.vented = vented;
  }

  void ask(PlaneLayout plane, Sections sections) {
    Limit least = isVented(plane) ? vented : wide;
    for (Sections.Between between : sections.nearest(wide.si())) {
      access.add(fact(plane, between, least));
    }
  }

  private boolean isVented(PlaneLayout plane) {
    boolean gravity =
        access.fire().smokeVents().filter(how -> how.value() == VentOperation.GRAVITY).isPresent();
    boolean vents =
        plane.obstacles().stream()
            .anyMatch(thing -> thing.obstruction().kind().value() == Kind.SMOKE_VENT);
    return access.fire().cutouts().isPresent() || (gravity && vents);
  }

  private SmokeAisle fact(PlaneLayout plane, Sections.Between between, Limit least) {
    double widthM = Snap.m(between.apartM());
    double leastM = Snap.m(least.si());
    String modules = between.one().name() + " and " + between.other().name();
    return new SmokeAisle(
        Access.subject("smoke paths").part(modules),
        Access.subject("smoke paths").part("planes." + plane.name()),
        between.other().at(),
        Shown.small(Shown.of(plane)),
        plane.name(),
        modules,
        widthM,
        leastM,
        Snap.m(Math.max(0, leastM - widthM)),
        least.equals(wide)
            ? "without gravity smoke vents on the plane or venting cutouts along it"
            : "with smoke vents or cutouts, instead of "
                + QuantityPrint.text(wide.si(), wide.unit()),
        Optional.of(least));
  }
}
