package clampwise.plan;

import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.plan.Drawn.Run;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The strip beside the plan: what it is, scale, north, legend. */
final class StripDrawing {

  static final double WIDTH_MM = 92;

  private static final double LINE_MM = 4;
  private static final double TEXT_MM = 2.7;
  private static final double SAMPLE_MM = 9;
  private static final double COLUMN_MM = 47;

  private final PlaneLayout plane;
  private final Canvas canvas;
  private final Arrangement places;

  StripDrawing(PlaneLayout plane, Canvas canvas, Arrangement places) {
    this.plane = plane;
    this.canvas = canvas;
    this.places = places;
  }

  /** Title, scale and north. */
  void head(String job, Frame frame) {
    canvas.layer("title");
    Point at = places.head();
    canvas.words(Style.TITLE, at, Letters.fitted("Plane " + plane.name(), Style.TITLE, 68));
    canvas.words(Style.TEXT, at.plus(0, 5.5), Letters.fitted(job, Style.TEXT, 68));
    canvas.words(Style.TEXT, at.plus(0, 10), slope());
    canvas.words(Style.TEXT, at.plus(0, 14.5), "Scale " + frame.scale().words() + " on A3");
    bar(at.plus(0, 19), frame);
    north(at.plus(82, 7));
  }

  private String slope() {
    String slope =
        plane
            .plane()
            .slope()
            .map(s -> "Slope " + QuantityPrint.text(s.si(), s.unit()))
            .orElse("Slope not given");
    String faces =
        plane
            .plane()
            .azimuth()
            .map(a -> ", faces " + QuantityPrint.text(a.si(), a.unit()))
            .orElse("");
    return slope + faces;
  }

  /** Four equal steps of a round length, every other one filled. */
  private void bar(Point at, Frame frame) {
    Unit unit = Shown.of(plane);
    double unitM = Sheets.isImperial(plane) ? Unit.FOOT.factor() : 1;
    double stepM = unitM;
    int[] factors = {1, 2, 5, 10, 20, 50, 100, 200, 500};
    for (int factor : factors) {
      stepM = factor * unitM;
      if (frame.mm(stepM) >= 8) {
        break;
      }
    }
    double step = frame.mm(stepM);
    for (int i = 0; i < 4; i++) {
      Style style = i % 2 == 0 ? Style.NORTH : Style.DIMENSION;
      canvas.add(
          Drawn.box(style, at.plus(i * step, 0), at.plus((i + 1) * step, 1.4), About.NOTHING));
    }
    canvas.words(Style.SMALL_TEXT, at.plus(0, 4.2), "0");
    String length = QuantityPrint.text(4 * stepM, unit);
    canvas.centred(Style.SMALL_TEXT, at.plus(4 * step, 4.2), length);
  }

  /** An arrow to the north: the plane faces down the sheet. */
  private void north(Point middle) {
    if (plane.plane().azimuth().isEmpty()) {
      canvas.centred(Style.SMALL_TEXT, middle, "north");
      canvas.centred(Style.SMALL_TEXT, middle.plus(0, 2.4), "not given");
      return;
    }
    double turn = plane.plane().azimuth().get().rad();
    Point tip = turned(middle, 6, turn);
    Point left = turned(middle, -5, turn + 0.45);
    Point right = turned(middle, -5, turn - 0.45);
    Point back = turned(middle, -3, turn);
    canvas.runs(
        Style.NORTH, List.of(new Run(List.of(tip, left, back, right), true)), About.NOTHING);
    canvas.centred(Style.HEADING, turned(middle, 9, turn).plus(0, 1.2), "N");
  }

  /** A point away from the middle, downwards on the sheet and then turned anticlockwise. */
  private static Point turned(Point middle, double awayMm, double turnRad) {
    return middle.plus(awayMm * Math.sin(turnRad), awayMm * Math.cos(turnRad));
  }

  /** What the marks mean, what is not on the plan, and what this is not. */
  void foot(Set<Integer> elsewhere, List<String> cautions) {
    canvas.layer("legend");
    Point at = places.legend();
    canvas.words(Style.HEADING, at, "Legend");
    List<Style> shown = new ArrayList<>(new TreeSet<>(canvas.used()));
    shown.removeIf(style -> !Sample.isExplained(style));
    int rows = places.legendRows();
    for (int i = 0; i < shown.size(); i++) {
      int column = i / rows;
      Point row = at.plus(column * COLUMN_MM, LINE_MM * (1.2 + i % rows));
      Sample.draw(shown.get(i), row.plus(0, -0.9), canvas);
      canvas.words(Style.SMALL_TEXT, row.plus(SAMPLE_MM, 0), shown.get(i).meaning());
    }
    texts(elsewhere, cautions);
  }

  private void texts(Set<Integer> elsewhere, List<String> cautions) {
    List<String> lines = new ArrayList<>();
    if (!elsewhere.isEmpty()) {
      String numbers = elsewhere.stream().map(String::valueOf).collect(Collectors.joining(", "));
      lines.addAll(Paragraph.lines("Findings without a place here: " + numbers, WIDTH_MM));
    }
    cautions.forEach(caution -> lines.addAll(Paragraph.lines(caution, WIDTH_MM)));
    Point at = places.texts().plus(0, -TEXT_MM * lines.size());
    for (String line : lines) {
      at = at.plus(0, TEXT_MM);
      canvas.words(Style.SMALL_TEXT, at, line);
    }
  }
}
