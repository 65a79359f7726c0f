package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Plane.EdgeKind;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Measures how far arrays stay below the ridge of a dwelling; by how much they must, may depend on
 * the share of the roof they cover.
 */
final class RidgeSetbacks {

  private static final Subject RIDGE = Access.subject("ridge setback");

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit wide;
  private final Optional<Limit> narrow;
  private final Optional<Limit> most;

  RidgeSetbacks(Access access, Outcome<Coverage> coverage, Limit wide) {
    this.access = access;
    this.coverage = coverage;
    this.wide = wide;
    this.narrow = access.limit("ridge-narrow");
    boolean sprinklered = access.fire().sprinklered().filter(Flag::value).isPresent();
    this.most =
        access.limit(sprinklered ? "ridge-coverage-sprinklered-most" : "ridge-coverage-most");
  }

  private record Near(PlacedModule module, double distanceM) {}

  void ask(List<PlaneLayout> steep) {
    for (PlaneLayout plane : steep) {
      if (plane.outline().isEmpty()) {
        missing(plane, plane.reading().outlineUnknown());
      } else if (!ridges(plane).isEmpty()) {
        ask(plane, nearest(plane));
      }
    }
  }

  private void missing(PlaneLayout plane, String reason) {
    access.missing(RidgeSetback.class, RIDGE.part("planes." + plane.name()), reason);
  }

  private static List<PlaneEdge> ridges(PlaneLayout plane) {
    return plane.edges().stream().filter(edge -> edge.kind() == EdgeKind.RIDGE).toList();
  }

  private static Near nearest(PlaneLayout plane) {
    return Access.modules(plane).stream()
        .map(module -> new Near(module, belowM(plane, module)))
        .min(Comparator.comparingDouble(Near::distanceM))
        .orElseThrow();
  }

  private static double belowM(PlaneLayout plane, PlacedModule module) {
    Blocker body = Blocker.of(module);
    return Snap.m(
        ridges(plane).stream()
            .mapToDouble(ridge -> body.distanceM(ridge.line(), Double.POSITIVE_INFINITY))
            .min()
            .orElseThrow());
  }

  private void ask(PlaneLayout plane, Near near) {
    boolean open = narrow.isPresent() && near.distanceM() < Snap.m(wide.si());
    Optional<String> unknown = open ? coverageUnknown() : Optional.empty();
    if (unknown.isPresent() && near.distanceM() >= Snap.m(narrow.orElseThrow().si())) {
      missing(plane, unknown.get());
    } else {
      Limit least = isNarrowEnough() ? narrow.orElseThrow() : wide;
      access.add(fact(plane, near, unknown.isPresent() ? narrow.orElseThrow() : least));
    }
  }

  private Optional<String> coverageUnknown() {
    if (access.isLost("sprinklered")) {
      return Optional.of("whether the dwelling has sprinklers could not be read");
    }
    return coverage instanceof NotApplicable<Coverage> none
        ? Optional.of(none.reason())
        : Optional.empty();
  }

  private boolean isNarrowEnough() {
    return narrow.isPresent()
        && coverage.result().filter(known -> known.share() <= most.orElseThrow().si()).isPresent();
  }

  private RidgeSetback fact(PlaneLayout plane, Near near, Limit least) {
    Unit shown = Shown.small(Shown.of(plane));
    double leastM = Snap.m(least.si());
    return new RidgeSetback(
        RIDGE.part("planes." + plane.name()),
        RIDGE,
        near.module().at(),
        shown,
        plane.name(),
        near.module().name(),
        near.distanceM(),
        leastM,
        Snap.m(Math.max(0, leastM - near.distanceM())),
        where(),
        near.distanceM() < leastM ? cure(plane, least, shown) : "",
        Optional.of(least));
  }

  /** What the setback depends on, if it does. */
  private String where() {
    return coverage
        .result()
        .filter(known -> narrow.isPresent())
        .map(
            known ->
                " where the arrays cover "
                    + percent(known.share())
                    + " of the roof in plan ("
                    + percent(most.orElseThrow().si())
                    + " is the most for "
                    + QuantityPrint.text(narrow.orElseThrow().si(), narrow.orElseThrow().unit())
                    + ")")
        .orElse("");
  }

  private static String percent(double share) {
    return QuantityPrint.text(share, Units.PERCENT);
  }

  private String cure(PlaneLayout plane, Limit least, Unit shown) {
    List<PlacedModule> near =
        Access.modules(plane).stream()
            .filter(module -> belowM(plane, module) < Snap.m(least.si()))
            .toList();
    return new Dropped(plane, near).words(coverage) + orFewer(plane, shown);
  }

  /** How many modules anywhere would bring the array under the coverage for the narrow setback. */
  private String orFewer(PlaneLayout plane, Unit shown) {
    boolean tooMany = narrow.isPresent() && !isNarrowEnough() && coverage.result().isPresent();
    if (!tooMany || nearest(plane).distanceM() < Snap.m(narrow.orElseThrow().si())) {
      return "";
    }
    Coverage known = coverage.result().orElseThrow();
    double oneShare =
        known.share() - known.shareWithout(plane, Access.modules(plane).subList(0, 1));
    double overShare = known.share() - most.orElseThrow().si();
    int count = (int) Math.ceil(Snap.m(overShare / oneShare));
    return "; or as many anywhere as bring the coverage down to "
        + percent(most.orElseThrow().si())
        + " (about "
        + (count == 1 ? "1 module" : count + " modules")
        + ") and keep "
        + QuantityPrint.text(narrow.orElseThrow().si(), shown);
  }
}
