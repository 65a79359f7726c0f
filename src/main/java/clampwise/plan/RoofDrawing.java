package clampwise.plan;

import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.roof.Shown;
import clampwise.plan.Drawn.Run;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;

/** The roof itself: zones, edges, seams, supports and what stands on it. */
final class RoofDrawing {

  private static final List<Style> GRADES =
      List.of(Style.ZONE_ONE_UP, Style.ZONE_TWO_UP, Style.ZONE_THREE_UP, Style.ZONE_FOUR_UP);

  private static final double NEAREST_LINES_MM = 1;
  private static final double NEAREST_NUMBERS_MM = 6;
  private static final double OUTSIDE_MM = 4.5;

  private final PlaneLayout plane;
  private final Frame frame;
  private final Canvas canvas;

  RoofDrawing(PlaneLayout plane, Frame frame, Canvas canvas) {
    this.plane = plane;
    this.frame = frame;
    this.canvas = canvas;
  }

  void ground() {
    canvas.layer("roof");
    plane.outline().ifPresent(outline -> canvas.shape(Style.ROOF, outline, frame));
  }

  void zones() {
    canvas.layer("zones");
    plane.zones().forEach(this::hatch);
  }

  /** What is seen on top of the modules. */
  void drawAbove() {
    canvas.layer("zone-borders");
    plane.zones().forEach(this::border);
    canvas.layer("seams");
    seams();
    supports();
    canvas.layer("edges");
    plane.edges().forEach(this::edge);
    canvas.layer("obstructions");
    plane.obstacles().forEach(this::obstacle);
  }

  private void hatch(ZoneArea zone) {
    int rank = rank(zone);
    if (rank > 0) {
      Style style = GRADES.get(rank - 1);
      double apartM = frame.metres(rank % 2 == 1 ? 4 : 2.2);
      canvas.shape(style, Hatching.of(zone.area(), apartM, true), frame);
      if (rank > 2) {
        canvas.shape(style, Hatching.of(zone.area(), apartM, false), frame);
      }
    }
  }

  /** How severe a zone is among those of the plane; 0 is the mildest. */
  private int rank(ZoneArea zone) {
    int milder =
        (int)
            plane.zones().stream()
                .mapToInt(ZoneArea::severity)
                .distinct()
                .filter(other -> other < zone.severity())
                .count();
    return Math.min(milder, GRADES.size());
  }

  private void border(ZoneArea zone) {
    canvas.shape(Style.ZONE_BORDER, zone.area(), frame);
    for (int i = 0; i < zone.area().getNumGeometries(); i++) {
      Geometry piece = zone.area().getGeometryN(i);
      Coordinate inside = piece.getInteriorPoint().getCoordinate();
      double roomMm = frame.mm(Math.sqrt(piece.getArea()));
      if (inside != null && Letters.widthMm(zone.name(), Style.ZONE_TEXT) < roomMm) {
        canvas.centred(Style.ZONE_TEXT, frame.at(inside).plus(0, 1), zone.name());
      }
    }
  }

  private void seams() {
    List<SeamLine> seams = plane.seams();
    int step = every(seams, NEAREST_LINES_MM);
    int numbered = Math.max(step, every(seams, NEAREST_NUMBERS_MM));
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < seams.size(); i += step) {
      SeamLine seam = seams.get(i);
      double[] upM = View.inSight(seam, frame.view());
      Point foot = frame.at(seam.alongM(), upM[0]);
      runs.add(new Run(List.of(foot, frame.at(seam.alongM(), upM[1])), false));
      if (i % numbered == 0) {
        canvas.centred(Style.SMALL_TEXT, foot.plus(0, 2.6), Integer.toString(seam.number()));
      }
    }
    canvas.runs(Style.SEAM, runs, About.NOTHING);
  }

  /** Every how many seams are drawn, so that they stay apart. */
  private int every(List<SeamLine> seams, double apartMm) {
    if (seams.size() < 2) {
      return 1;
    }
    double spanM = seams.get(seams.size() - 1).alongM() - seams.get(0).alongM();
    double eachMm = frame.mm(spanM / (seams.size() - 1));
    int step = (int) Math.ceil(apartMm / Math.max(eachMm, 1e-9));
    return step <= 1 ? 1 : step <= 2 ? 2 : (step + 4) / 5 * 5;
  }

  private void supports() {
    List<Run> runs = new ArrayList<>();
    for (double upM : plane.supports()) {
      runs.addAll(across(upM));
    }
    canvas.runs(Style.SUPPORT, runs, About.NOTHING);
    List<Run> laps = new ArrayList<>();
    plane.endLapsM().forEach(upM -> laps.addAll(across(upM)));
    canvas.runs(Style.END_LAP, laps, About.NOTHING);
  }

  /** What the roof has of a line across it; all that is in sight where it has no outline. */
  private List<Run> across(double upM) {
    Coordinate left = new Coordinate(frame.view().getMinX(), upM);
    Coordinate right = new Coordinate(frame.view().getMaxX(), upM);
    Geometry line = Spots.SHAPES.createLineString(new Coordinate[] {left, right});
    return frame.runs(plane.outline().map(line::intersection).orElse(line));
  }

  private void edge(PlaneEdge edge) {
    Style style = Style.valueOf(edge.kind().name());
    LineSegment line = edge.line();
    Point from = frame.at(line.p0);
    Point to = frame.at(line.p1);
    canvas.line(style, from, to);
    String length = QuantityPrint.text(line.getLength(), Shown.of(plane));
    String text = style.meaning() + " " + length;
    if (Letters.widthMm(text, Style.TEXT) < from.to(to)) {
      Coordinate outside = line.pointAlongOffset(0.5, -frame.metres(OUTSIDE_MM));
      canvas.turned(Style.TEXT, frame.at(outside).plus(0, 1), text, readable(line));
    }
  }

  /** The turn of words along an edge, never upside down [deg]. */
  private static double readable(LineSegment line) {
    double deg = Math.toDegrees(line.angle());
    double turned = deg > 90 ? deg - 180 : deg <= -90 ? deg + 180 : deg;
    return Math.rint(turned * 10) / 10;
  }

  private void obstacle(Obstacle obstacle) {
    if (!obstacle.keepClear().equalsTopo(obstacle.body())) {
      canvas.shape(Style.KEEP_CLEAR, obstacle.keepClear(), frame);
    }
    canvas.shape(Style.OBSTACLE, obstacle.body(), frame);
    Coordinate middle = obstacle.body().getCentroid().getCoordinate();
    double halfM = obstacle.body().getEnvelopeInternal().getHeight() / 2;
    Point below = frame.at(middle.x, middle.y - halfM).plus(0, 2.6);
    canvas.centred(Style.SMALL_TEXT, below, Letters.fitted(obstacle.name(), Style.SMALL_TEXT, 40));
  }
}
