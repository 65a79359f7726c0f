package clampwise.facts.weight;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.RoofGeometry;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Quantity.Length;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;

/** Holds the share of the roof that the arrays cover in plan against the expedited path. */
final class RoofCoverages {

  private static final Subject COVERAGE = ExpeditedPath.cause("coverage");

  private RoofCoverages() {}

  static void ask(Layout layout, Limits limits, Answers answers) {
    ExpeditedPath.claimed(layout.job().claims())
        .ifPresent(at -> ask(layout, at, limits.get("expedited-coverage-most"), answers));
  }

  private static void ask(Layout layout, Span at, Limit most, Answers answers) {
    Outcome<Double> array = arrayM2(layout);
    Optional<Double> roof = roofM2(layout);
    if (roof.isEmpty()) {
      answers.missing(RoofCoverage.class, COVERAGE, sizeUnknown(layout.job().unreadable()), at);
    } else if (array instanceof Result<Double> known) {
      answers.add(fact(at, most, units(layout), new Areas(known.value(), roof.get())));
    } else if (array instanceof NotApplicable<Double> unknown) {
      answers.missing(RoofCoverage.class, COVERAGE, unknown.reason(), at);
    }
  }

  private static String sizeUnknown(Unreadable unreadable) {
    boolean width = unreadable.touches("building", "width");
    String key = width ? "width" : "length";
    return unreadable.missing("the plan size of the building", "building", key);
  }

  private record Areas(double arrayM2, double roofM2) {}

  private static Optional<Double> roofM2(Layout layout) {
    Optional<Building> building = layout.job().building();
    return building
        .flatMap(Building::length)
        .flatMap(length -> building.flatMap(Building::width).map(width -> areaM2(length, width)));
  }

  private static double areaM2(Length length, Length width) {
    return length.m() * width.m();
  }

  private static Outcome<Double> arrayM2(Layout layout) {
    Optional<String> incomplete = LateralIncreases.AllFields.incomplete(layout);
    if (incomplete.isPresent()) {
      return new NotApplicable<>(incomplete.get());
    }
    double sum = 0;
    for (PlaneLayout plane : layout.planes()) {
      if (plane.plane().slope().isEmpty() && !plane.fields().isEmpty()) {
        return new NotApplicable<>(
            layout
                .job()
                .unreadable()
                .missing("the slope of plane " + plane.name(), "planes", plane.name(), "slope"));
      }
      double slopeRad = plane.plane().slope().map(slope -> slope.rad()).orElse(0.0);
      sum += RoofGeometry.planM(onSlopeM2(plane), slopeRad);
    }
    return new Result<>(sum);
  }

  private static double onSlopeM2(PlaneLayout plane) {
    return plane.fields().stream()
        .flatMap(field -> field.modules().stream())
        .mapToDouble(module -> module.alongM() * module.upM())
        .sum();
  }

  private static Unit units(Layout layout) {
    return layout.planes().stream()
            .map(Shown::of)
            .anyMatch(unit -> unit.equals(Unit.FOOT) || unit.equals(Unit.INCH))
        ? Units.SQUARE_FOOT
        : Units.SQUARE_METRE;
  }

  private static RoofCoverage fact(Span at, Limit most, Unit unit, Areas areas) {
    return new RoofCoverage(
        COVERAGE,
        COVERAGE,
        at,
        unit,
        areas.arrayM2(),
        areas.roofM2(),
        Snap.m(areas.arrayM2() / areas.roofM2()),
        most.si(),
        Optional.of(most));
  }
}
