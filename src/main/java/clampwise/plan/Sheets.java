package clampwise.plan;

import clampwise.facts.Facts;
import clampwise.facts.bonding.BondingMap;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.review.Cautions;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;

/**
 * Draws the planes of a reviewed job, a sheet each, to scale on A3 paper.
 *
 * <p>A plane of so many modules that they would be specks has its modules drawn as one mark a field
 * and neither attachments nor names; what findings show stays marked.
 */
public final class Sheets {

  private static final double EDGE_MM = 6;
  private static final double AROUND_MM = 12;
  private static final int MOST_EACH = 12_000;

  private final String job;
  private final Facts facts;
  private final List<NumberedFinding> findings;
  private final Optional<BondingMap> bonding;
  private final ModuleWords words;

  private Sheets(Review review, Facts facts) {
    this.job = review.title();
    this.facts = facts;
    this.findings = NumberedFinding.of(review.findings(), new Spots(facts.layout()));
    this.bonding = BondingMap.of(facts.layout());
    this.words = new ModuleWords(facts.facts());
  }

  /** The sheets of a review; none where nothing could be laid out. */
  public static List<PlanSheet> of(Review review) {
    return review
        .facts()
        .map(facts -> new Sheets(review, facts))
        .map(Sheets::all)
        .orElse(List.of());
  }

  /** Whether a plane was measured in feet and inches. */
  static boolean isImperial(PlaneLayout plane) {
    String unit = Shown.of(plane).symbol();
    return unit.equals("ft") || unit.equals("in");
  }

  private List<PlanSheet> all() {
    List<PlanSheet> sheets = new ArrayList<>();
    for (PlaneLayout plane : facts.layout().planes()) {
      if (!View.of(plane).isNull()) {
        sheets.add(sheet(plane));
      }
    }
    return sheets;
  }

  private PlanSheet sheet(PlaneLayout plane) {
    Envelope view = View.of(plane);
    Arrangement places = Arrangement.of(view.getWidth(), view.getHeight());
    DrawingScale scale =
        DrawingScale.fitting(view.getWidth(), view.getHeight(), places.room(), isImperial(plane));
    Frame frame = new Frame(view, Arrangement.CORNER, scale);
    Canvas canvas = new Canvas();
    canvas.layer("paper");
    canvas.add(
        Drawn.box(
            Style.FRAME,
            new Point(EDGE_MM, EDGE_MM),
            new Point(PlanSheet.WIDTH_MM - EDGE_MM, PlanSheet.HEIGHT_MM - EDGE_MM),
            About.NOTHING));
    plan(plane, frame, canvas);
    marks(plane, frame, canvas);
    strip(plane, frame, canvas, places);
    return new PlanSheet(
        "Plane " + plane.name() + " of " + job,
        plane.name(),
        PlanSheet.WIDTH_MM,
        PlanSheet.HEIGHT_MM,
        canvas.layers());
  }

  private void plan(PlaneLayout plane, Frame frame, Canvas canvas) {
    boolean each = plane.fields().stream().mapToInt(f -> f.modules().size()).sum() <= MOST_EACH;
    RoofDrawing roof = new RoofDrawing(plane, frame, canvas);
    ArrayDrawing array = new ArrayDrawing(frame, canvas, words, each);
    roof.ground();
    new AccessDrawing(plane, facts.facts(), frame, canvas).draw();
    roof.zones();
    plane.fields().forEach(array::modules);
    roof.drawAbove();
    bonding.ifPresent(map -> new BondDrawing(map, frame, canvas).draw(plane));
    plane.fields().forEach(array::attachments);
    plane.fields().forEach(array::names);
    dimensions(plane, frame, canvas);
  }

  /** Marks stay on the plan and a little around it, off the strip. */
  private void marks(PlaneLayout plane, Frame frame, Canvas canvas) {
    Point corner = frame.corner();
    Point opposite = frame.opposite();
    Envelope room = new Envelope(corner.xMm(), opposite.xMm(), corner.yMm(), opposite.yMm());
    room.expandBy(AROUND_MM);
    new MarkDrawing(frame, canvas, room).draw(findings, plane.name());
  }

  /** Where fields begin and end, from edge to edge of the roof. */
  private static void dimensions(PlaneLayout plane, Frame frame, Canvas canvas) {
    TreeSet<Double> along = new TreeSet<>();
    TreeSet<Double> up = new TreeSet<>();
    for (FieldLayout field : plane.fields()) {
      Envelope extent = Spots.extent(field);
      if (!extent.isNull()) {
        along.addAll(List.of(extent.getMinX(), extent.getMaxX()));
        up.addAll(List.of(extent.getMinY(), extent.getMaxY()));
      }
    }
    along.addAll(List.of(frame.view().getMinX(), frame.view().getMaxX()));
    up.addAll(List.of(frame.view().getMinY(), frame.view().getMaxY()));
    canvas.layer("dimensions");
    double belowMm = frame.opposite().yMm() + 13;
    new Chain(canvas, belowMm, Shown.of(plane)).along(List.copyOf(along), frame);
    double leftMm = frame.corner().xMm() - 12;
    new Chain(canvas, leftMm, Shown.of(plane)).up(List.copyOf(up), frame);
  }

  private void strip(PlaneLayout plane, Frame frame, Canvas canvas, Arrangement places) {
    StripDrawing strip = new StripDrawing(plane, canvas, places);
    strip.head(job, frame);
    Point room = new Point(StripDrawing.WIDTH_MM, 92);
    shown(plane).ifPresent(m -> new DetailDrawing(plane, m, canvas, places.detail(), room).draw());
    strip.foot(
        NumberedFinding.elsewhere(findings),
        List.of(
            "Drawn by a program from the job file; no engineer's, permit or shop drawing.",
            Cautions.NO_APPROVAL));
  }

  /** A module with a clamp in no clamp zone; else that of the first finding at one; else any. */
  private Optional<PlacedModule> shown(PlaneLayout plane) {
    List<PlacedModule> modules =
        plane.fields().stream().flatMap(field -> field.modules().stream()).toList();
    return offZone(plane)
        .or(() -> ofFindings(plane, modules))
        .or(() -> modules.stream().findFirst());
  }

  private static Optional<PlacedModule> offZone(PlaneLayout plane) {
    return plane.fields().stream()
        .flatMap(field -> field.attachments().stream())
        .flatMap(attachment -> attachment.grips().stream())
        .filter(grip -> grip.row().isEmpty() && !grip.module().type().clampZones().isEmpty())
        .map(Grip::module)
        .findFirst();
  }

  private Optional<PlacedModule> ofFindings(PlaneLayout plane, List<PlacedModule> modules) {
    return findings.stream()
        .flatMap(finding -> finding.on(plane.name()).stream().limit(1))
        .flatMap(
            spot ->
                modules.stream()
                    .filter(m -> spot.area().getEnvelopeInternal().equals(Spots.box(m))))
        .findFirst();
  }
}
