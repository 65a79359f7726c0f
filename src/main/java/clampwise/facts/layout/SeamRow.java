package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Count;
import clampwise.job.Panel;
import clampwise.job.Plane;
import clampwise.job.Plane.Seams;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Offset;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds where the seams, ribs or crests of a plane lie along the eave: surveyed, else nominal. */
final class SeamRow {

  private static final int MOST_SEAMS = 100_000;

  /** One seam's place along the eave. */
  record Place(int number, double alongM, OptionalDouble nominalM, boolean surveyed, Span at) {}

  private final Problems problems;

  SeamRow(Problems problems) {
    this.problems = problems;
  }

  List<Place> of(Plane plane, Optional<Panel> panel, Outline outline) {
    if (plane.seams().isEmpty()) {
      return List.of();
    }
    Seams seams = plane.seams().orElseThrow();
    Optional<Length> pitch = pitch(seams, panel);
    if (pitch.flatMap(given -> narrower(given, panel)).map(this::refuse).isPresent()) {
      return List.of();
    }
    if (!seams.surveyed().isEmpty()) {
      return surveyed(seams, pitch);
    }
    return seams
        .first()
        .flatMap(first -> pitch.map(given -> nominal(first, given, count(seams, given, outline))))
        .orElse(List.of());
  }

  /** What is wrong with a pitch that seams or ribs of this width do not fit in. */
  private static Optional<Problem> narrower(Length pitch, Optional<Panel> panel) {
    String line = LineWord.of(panel).one();
    return panel
        .flatMap(Panel::topWidth)
        .filter(width -> pitch.m() <= width.m())
        .map(
            width ->
                Problem.of(
                    pitch.at(),
                    "a pitch of "
                        + text(pitch)
                        + " where a "
                        + line
                        + " is "
                        + text(width)
                        + " wide",
                    "the distance from one " + line + " to the next"));
  }

  private static String text(Length length) {
    return QuantityPrint.text(length.si(), length.unit());
  }

  private Problem refuse(Problem problem) {
    problems.add(problem);
    return problem;
  }

  /** Pitch of the drawing, else of the covering. */
  static Optional<Length> pitch(Seams seams, Optional<Panel> panel) {
    return seams.pitch().or(() -> panel.flatMap(Panel::pitch));
  }

  private List<Place> surveyed(Seams seams, Optional<Length> pitch) {
    List<Offset> measured = inOrder(seams.surveyed());
    double firstM = seams.first().orElse(measured.get(0)).m();
    List<Place> places = new ArrayList<>();
    for (int n = 0; n < measured.size(); n++) {
      int step = n;
      OptionalDouble nominalM =
          pitch.stream().mapToDouble(given -> Snap.m(firstM + step * given.m())).findFirst();
      Offset here = measured.get(n);
      places.add(new Place(n + 1, here.m(), nominalM, true, here.at()));
    }
    return List.copyOf(places);
  }

  private List<Offset> inOrder(List<Offset> measured) {
    for (int n = 1; n < measured.size(); n++) {
      if (measured.get(n).m() <= measured.get(n - 1).m()) {
        problems.add(
            Problem.of(
                measured.get(n).at(),
                "a seam that is not to the right of the one before",
                "positions measured from the left, each larger than the last"));
      }
    }
    return measured.stream().sorted((a, b) -> Double.compare(a.m(), b.m())).toList();
  }

  private int count(Seams seams, Length pitch, Outline outline) {
    double rightM =
        outline.area().map(area -> area.getEnvelopeInternal().getMaxX()).orElse(Double.NaN);
    double firstM = seams.first().map(Offset::m).orElse(0.0);
    double fitting = Math.floor(Snap.m(rightM - firstM) / pitch.m()) + 1;
    double count = seams.count().map(Count::value).map(Double::valueOf).orElse(fitting);
    if (count > MOST_SEAMS || pitch.m() == 0) {
      problems.add(
          Problem.of(
              seams.count().map(Count::at).orElse(pitch.at()),
              "more than " + MOST_SEAMS + " seams on a plane",
              "fewer seams, or a wider pitch"));
      return 0;
    }
    return (int) count;
  }

  private static List<Place> nominal(Offset first, Length pitch, int count) {
    List<Place> places = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      double alongM = Snap.m(first.m() + n * pitch.m());
      places.add(new Place(n + 1, alongM, OptionalDouble.of(alongM), false, first.at()));
    }
    return List.copyOf(places);
  }
}
