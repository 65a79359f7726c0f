package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Building.RoofShape;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Slope;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;

/**
 * Holds planes in plan against the building: wind takes its zones from the building, so a building
 * that is written too small makes them too narrow. The ridge of a gable is taken to be in the
 * middle, as the height of the roof takes it. Which size of a hip or flat roof a plane runs along
 * is not known, so there the larger one counts.
 */
final class PlanSizes implements Question {

  private static final int RAKES = 2;

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Limit overhang = limits.get("overhang-most");
    layout.planes().forEach(plane -> new Asked(layout, plane, overhang, answers).ask());
  }

  /** A size of the building. */
  private record Side(String words, String key, Optional<Length> size, double share) {

    double m() {
      return Snap.m(size.orElseThrow().m() * share);
    }
  }

  private record Asked(Layout layout, PlaneLayout plane, Limit overhang, Answers answers) {

    void ask() {
      Optional<String> unknown = unknown();
      if (unknown.isPresent()) {
        missing(unknown.get());
        return;
      }
      Envelope box = plane.outline().orElseThrow().getEnvelopeInternal();
      double slopeRad = plane.plane().slope().map(Slope::rad).orElse(0.0);
      answer("along its eave", Snap.m(box.getWidth()), RAKES, alongEave());
      answer(
          "from eave to " + (isGable() ? "ridge" : "upper edge"),
          Snap.m(box.getHeight() * Math.cos(slopeRad)),
          isGable() ? 1 : RAKES,
          upSlope());
    }

    private Optional<String> unknown() {
      if (plane.outline().isEmpty()) {
        return Optional.of(plane.reading().outlineUnknown());
      }
      if (plane.plane().slope().isEmpty() && shape().filter(RoofShape.FLAT::equals).isEmpty()) {
        return Optional.of(reason("the slope of the plane", "planes", plane.name(), "slope"));
      }
      return shape().isEmpty()
          ? Optional.of(reason("the roof shape of the building", "building", "roof"))
          : Optional.empty();
    }

    private Side alongEave() {
      return isSided() ? length() : longest();
    }

    private Side upSlope() {
      if (isGable()) {
        Side width = width();
        return new Side("half the width of the building", width.key, width.size, 0.5);
      }
      return isSided() ? width() : longest();
    }

    private Side length() {
      return new Side("the length of the building", "length", size(Building::length), 1);
    }

    private Side width() {
      return new Side("the width of the building", "width", size(Building::width), 1);
    }

    private Side longest() {
      Side length = length();
      Side width = width();
      boolean both = length.size.isPresent() && width.size.isPresent();
      return both && width.m() <= length.m() || length.size.isEmpty() ? length : width;
    }

    private void answer(String direction, double planM, int overhangs, Side side) {
      if (side.size.isEmpty()) {
        missing(reason("the plan size of the building", "building", side.key));
        return;
      }
      double overhangsM = Snap.m(overhangs * overhang.si());
      answers.add(
          new PlanSize(
              RoofSubjects.plane(plane).part("plan " + direction),
              Subject.of("building." + side.key),
              side.size.get().at(),
              Shown.of(plane),
              plane.name(),
              direction,
              planM,
              side.words,
              side.m(),
              side.key,
              overhangsM,
              Snap.m(side.m() + overhangsM),
              Optional.of(overhang)));
    }

    private Optional<RoofShape> shape() {
      return layout.job().building().flatMap(Building::roof).map(roof -> roof.value());
    }

    private boolean isGable() {
      return shape().filter(RoofShape.GABLE::equals).isPresent();
    }

    /** Whether the eave runs along the length of the building. */
    private boolean isSided() {
      return isGable() || shape().filter(RoofShape.MONOSLOPE::equals).isPresent();
    }

    private Optional<Length> size(Function<Building, Optional<Length>> of) {
      return layout.job().building().flatMap(of);
    }

    private String reason(String what, String... path) {
      return layout.job().unreadable().missing(what, path);
    }

    private void missing(String reason) {
      answers.missing(
          PlanSize.class, RoofSubjects.plane(plane), reason, plane.plane().panel().at());
    }
  }
}
