package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Plane;
import clampwise.job.Plane.Purlins;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Offset;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** Places the purlin or clip lines and the end laps of a plane, and looks at its joints. */
final class Supports {

  private static final int MOST_LINES = 10_000;

  private final Problems problems;

  Supports(Problems problems) {
    this.problems = problems;
  }

  List<Double> purlins(Plane plane, Outline outline) {
    Optional<Purlins> purlins = plane.purlins();
    if (purlins.filter(given -> !given.at().isEmpty()).isPresent()) {
      return sorted(purlins.orElseThrow().at());
    }
    return purlins
        .flatMap(
            given ->
                given.first().flatMap(first -> given.spacing().map(s -> spaced(first, s, outline))))
        .orElse(List.of());
  }

  List<Double> endLaps(Plane plane) {
    return sorted(plane.endLaps());
  }

  /** Tells expansion joints that do not cross the plane. */
  void joints(Plane plane, Outline outline) {
    outline
        .area()
        .map(Polygon::getEnvelopeInternal)
        .ifPresent(
            box ->
                plane.expansionJoints().orElse(List.of()).stream()
                    .filter(joint -> joint.m() < box.getMinX() || joint.m() > box.getMaxX())
                    .forEach(this::tellOffThePlane));
  }

  private void tellOffThePlane(Offset joint) {
    problems.add(
        Problem.of(
            joint.at(),
            "an expansion joint off its plane",
            "a distance along the eave, from its left end"));
  }

  private List<Double> spaced(Offset first, Length spacing, Outline outline) {
    double topM =
        outline.area().map(area -> area.getEnvelopeInternal().getMaxY()).orElse(first.m());
    double count = Math.floor(Snap.m(topM - first.m()) / spacing.m()) + 1;
    if (!(count <= MOST_LINES)) {
      problems.add(
          Problem.of(spacing.at(), "more than " + MOST_LINES + " purlins", "a wider spacing"));
      return List.of();
    }
    List<Double> lines = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      lines.add(Snap.m(first.m() + n * spacing.m()));
    }
    return List.copyOf(lines);
  }

  private static List<Double> sorted(List<Offset> offsets) {
    return offsets.stream().map(Offset::m).sorted().toList();
  }
}
