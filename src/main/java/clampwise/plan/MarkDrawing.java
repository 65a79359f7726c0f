package clampwise.plan;

import clampwise.finding.Severity;
import clampwise.plan.Drawn.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Where findings show: an outline of every place, and a mark with the number at the worst. */
final class MarkDrawing {

  private static final double HALF_MM = 2.5;
  private static final double TOUCH_MM = 0.4;
  private static final double STEP_MM = 4.2;
  private static final int RINGS = 14;
  private static final int NEAR_RINGS = 4;
  private static final int AROUND = 12;
  private static final int MOST_PLACES = 3000;
  private static final double GAP_M = 0.03;

  /** A mark of a finding, and the place that it is about. */
  private record Marked(NumberedFinding finding, Point middle, Point place) {}

  private final Frame frame;
  private final Canvas canvas;
  private final Envelope room;
  private final List<Point> taken = new ArrayList<>();
  private final STRtree words = new STRtree();

  /**
   * Marks on a sheet.
   *
   * @param room where marks may stand on the sheet [mm]
   */
  MarkDrawing(Frame frame, Canvas canvas, Envelope room) {
    this.frame = frame;
    this.canvas = canvas;
    this.room = room;
    canvas.written().forEach(box -> words.insert(box, box));
    words.build();
  }

  /** Marks the findings that have a place on this plane; no leader runs over a mark. */
  void draw(List<NumberedFinding> findings, String plane) {
    canvas.layer("findings");
    findings.forEach(finding -> outline(finding, finding.on(plane)));
    List<Marked> marks = new ArrayList<>();
    for (NumberedFinding finding : findings) {
      finding.on(plane).stream().limit(1).forEach(worst -> marks.add(mark(finding, worst)));
    }
    marks.forEach(this::leader);
    marks.forEach(this::symbol);
  }

  private void outline(NumberedFinding finding, List<Spot> spots) {
    List<Geometry> areas =
        spots.stream().filter(spot -> !spot.whole()).limit(MOST_PLACES).map(Spot::area).toList();
    List<Run> runs = new ArrayList<>();
    joined(areas).forEach(area -> runs.addAll(frame.runs(area)));
    canvas.runs(area(finding), runs, about(finding));
  }

  /** Areas that touch, but for the gaps between modules, have one outline. */
  private static List<Geometry> joined(List<Geometry> areas) {
    boolean allWide = areas.stream().allMatch(area -> area.getDimension() == 2);
    if (areas.size() < 2 || !allWide) {
      return areas;
    }
    int flat = BufferParameters.CAP_FLAT;
    Geometry grown =
        UnaryUnionOp.union(areas.stream().map(area -> mitred(area, GAP_M, flat)).toList());
    return List.of(mitred(grown, -GAP_M, flat));
  }

  private static Geometry mitred(Geometry area, double byM, int cap) {
    int mitre = BufferParameters.JOIN_MITRE;
    return BufferOp.bufferOp(area, byM, new BufferParameters(1, cap, mitre, 2));
  }

  private static About about(NumberedFinding finding) {
    return About.finding(finding.number(), finding.title());
  }

  private static Style area(NumberedFinding finding) {
    return switch (finding.finding().severity()) {
      case ERROR -> Style.ERROR_AREA;
      case WARNING -> Style.WARNING_AREA;
      case NOTE -> Style.NOTE_AREA;
    };
  }

  private Marked mark(NumberedFinding finding, Spot worst) {
    Point place = place(worst);
    Point middle = free(place);
    taken.add(middle);
    return new Marked(finding, middle, place);
  }

  private void leader(Marked mark) {
    if (mark.middle.to(mark.place) > HALF_MM) {
      Run run = new Run(List.of(mark.middle, mark.place), false);
      canvas.runs(Style.LEADER, List.of(run), about(mark.finding));
    }
  }

  private Point place(Spot spot) {
    if (spot.whole()) {
      Envelope all = spot.area().getEnvelopeInternal();
      return frame.at(all.getMinX(), all.getMaxY()).plus(6, 6);
    }
    Coordinate middle = spot.area().getCentroid().getCoordinate();
    return frame.at(middle);
  }

  /** The nearest point at which a mark touches no other; one that hides no words if it is near. */
  private Point free(Point place) {
    return free(place, NEAR_RINGS, true).or(() -> free(place, RINGS, false)).orElse(place);
  }

  private Optional<Point> free(Point place, int rings, boolean hidesNothing) {
    for (int ring = 0; ring <= rings; ring++) {
      for (int i = 0; i < (ring == 0 ? 1 : AROUND); i++) {
        double turn = 2 * Math.PI * i / AROUND - Math.PI / 4;
        double away = ring * STEP_MM;
        Point point = place.plus(away * Math.cos(turn), away * Math.sin(turn));
        if (isFree(point) && !(hidesNothing && hidesWords(point))) {
          return Optional.of(point);
        }
      }
    }
    return Optional.empty();
  }

  private boolean isFree(Point point) {
    return room.contains(point.xMm(), point.yMm())
        && taken.stream().allMatch(other -> other.to(point) > 2 * HALF_MM + TOUCH_MM);
  }

  private boolean hidesWords(Point point) {
    Envelope mark = new Envelope(new Coordinate(point.xMm(), point.yMm()));
    mark.expandBy(HALF_MM);
    return !words.query(mark).isEmpty();
  }

  private void symbol(Marked mark) {
    NumberedFinding finding = mark.finding;
    Point middle = mark.middle;
    About about = about(finding);
    Severity severity = finding.finding().severity();
    canvas.add(sign(severity, middle, HALF_MM, about));
    Style digits = severity == Severity.ERROR ? Style.WHITE_TEXT : Style.MARK_TEXT;
    Point base = middle.plus(0, 0.8);
    String number = Integer.toString(finding.number());
    canvas.add(new Drawn.Words(digits, base, number, Drawn.Anchor.MIDDLE, 0, about));
  }

  /** An error is a filled square, a warning an open diamond, a note an open circle. */
  static Drawn sign(Severity severity, Point middle, double halfMm, About about) {
    Point corner = middle.plus(-halfMm, -halfMm);
    return switch (severity) {
      case ERROR -> Drawn.box(Style.ERROR_MARK, corner, middle.plus(halfMm, halfMm), about);
      case WARNING -> diamond(middle, 1.2 * halfMm, about);
      case NOTE -> new Drawn.Disc(Style.NOTE_MARK, middle, halfMm, about);
    };
  }

  private static Drawn diamond(Point middle, double half, About about) {
    List<Point> corners =
        List.of(
            middle.plus(0, -half),
            middle.plus(half, 0),
            middle.plus(0, half),
            middle.plus(-half, 0));
    return new Drawn.Lines(Style.WARNING_MARK, List.of(new Run(corners, true)), about);
  }
}
