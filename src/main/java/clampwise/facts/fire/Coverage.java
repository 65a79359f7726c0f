package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.RoofGeometry;
import clampwise.calc.Snap;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Building;
import clampwise.job.Fire;
import clampwise.job.Flag;
import clampwise.job.Quantity;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The share of the whole roof that the arrays cover, both seen in plan.
 *
 * @param arrayM2 plan area of all modules [m²]
 * @param roofM2 plan area of the whole roof [m²]
 * @param onSlopeM2 area of all modules as it lies on the slope [m²]
 */
record Coverage(double arrayM2, double roofM2, double onSlopeM2) {

  /** Planes that reach this share of the building in plan are all of its roof. */
  private static final double WHOLE = 0.99;

  double share() {
    return Snap.m(arrayM2 / roofM2);
  }

  /** The share that is left when modules of a plane are left out. */
  double shareWithout(PlaneLayout plane, Collection<PlacedModule> left) {
    return Snap.m((arrayM2 - planM2(plane, areaM2(left))) / roofM2);
  }

  static Outcome<Coverage> of(Layout layout) {
    Optional<String> incomplete = layout.incomplete().stream().findFirst();
    if (incomplete.isPresent()) {
      return new NotApplicable<>(
          "field " + incomplete.get() + " could not be read or laid out as written");
    }
    Optional<String> unsloped =
        layout.planes().stream()
            .filter(plane -> !plane.fields().isEmpty())
            .filter(plane -> plane.plane().slope().isEmpty())
            .map(plane -> "the slope of plane " + plane.name() + " is not given (slope)")
            .findFirst();
    return unsloped
        .<Outcome<Coverage>>map(NotApplicable::new)
        .orElseGet(() -> roofM2(layout).then(roofM2 -> new Result<>(of(layout, roofM2))));
  }

  private static Coverage of(Layout layout, double roofM2) {
    double arrayM2 = 0;
    double onSlopeM2 = 0;
    for (PlaneLayout plane : layout.planes()) {
      double areaM2 = areaM2(Access.modules(plane));
      onSlopeM2 += areaM2;
      arrayM2 += areaM2 > 0 ? planM2(plane, areaM2) : 0;
    }
    return new Coverage(arrayM2, roofM2, onSlopeM2);
  }

  private static Outcome<Double> roofM2(Layout layout) {
    if (layout.job().unreadable().touches("fire", "roof-plan-area")
        || layout.job().unreadable().touches("fire", "whole-roof")) {
      return new NotApplicable<>("the plan area of the whole roof could not be read");
    }
    Optional<Double> stated =
        layout.job().fire().flatMap(Fire::roofPlanArea).map(Quantity::si).filter(m2 -> m2 > 0);
    Optional<Double> known =
        stated
            .or(() -> isWholeRoof(layout).filter(whole -> whole).flatMap(w -> drawnM2(layout)))
            .or(() -> buildingM2(layout));
    return known
        .<Outcome<Double>>map(Result::new)
        .orElseGet(
            () ->
                new NotApplicable<>(
                    "the plan area of the whole roof is not given (fire: roof-plan-area)"));
  }

  /** Whether all planes of the roof are drawn, as the job says or as their areas show. */
  static Optional<Boolean> isWholeRoof(Layout layout) {
    Optional<Boolean> stated = layout.job().fire().flatMap(Fire::wholeRoof).map(Flag::value);
    return stated.or(
        () ->
            buildingM2(layout)
                .flatMap(whole -> drawnM2(layout).map(drawn -> drawn >= WHOLE * whole)));
  }

  private static Optional<Double> buildingM2(Layout layout) {
    Optional<Building> building = layout.job().building();
    return building
        .flatMap(Building::length)
        .flatMap(length -> building.flatMap(Building::width).map(width -> length.m() * width.m()))
        .filter(areaM2 -> areaM2 > 0);
  }

  /** Plan area of all planes drawn; empty where one of them is not known. */
  private static Optional<Double> drawnM2(Layout layout) {
    List<PlaneLayout> planes = layout.planes();
    boolean known =
        planes.stream().allMatch(p -> p.outline().isPresent() && p.plane().slope().isPresent());
    return known
        ? Optional.of(
            planes.stream().mapToDouble(p -> planM2(p, p.outline().orElseThrow().getArea())).sum())
        : Optional.empty();
  }

  private static double areaM2(Collection<PlacedModule> modules) {
    return modules.stream().mapToDouble(module -> module.alongM() * module.upM()).sum();
  }

  private static double planM2(PlaneLayout plane, double onSlopeM2) {
    return RoofGeometry.planM(onSlopeM2, plane.plane().slope().orElseThrow().rad());
  }
}
