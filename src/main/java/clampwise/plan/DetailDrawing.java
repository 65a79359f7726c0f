package clampwise.plan;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ClampZones;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.facts.roof.Shown;
import clampwise.job.ModuleType.ClampZone;
import clampwise.plan.Drawn.Run;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;

/** One module, larger: its clamp zones, the seams below it and the clamps that hold it. */
final class DetailDrawing {

  private static final double BESIDE_M = 0.2;
  private static final double ZONE_MM = 2.2;
  private static final double CLAMP_MM = 1.1;

  private final PlaneLayout plane;
  private final FieldLayout field;
  private final PlacedModule module;
  private final Canvas canvas;
  private final Frame frame;

  /**
   * A drawing of one module.
   *
   * @param corner upper left corner of the room for it
   * @param room its width and height
   */
  DetailDrawing(PlaneLayout plane, PlacedModule module, Canvas canvas, Point corner, Point room) {
    this.plane = plane;
    this.module = module;
    this.field =
        plane.fields().stream()
            .filter(f -> f.name().equals(module.field()))
            .findFirst()
            .orElseThrow();
    this.canvas = canvas;
    Envelope view = Spots.box(module);
    view.expandBy(BESIDE_M);
    boolean imperial = Sheets.isImperial(plane);
    DrawingScale scale =
        DrawingScale.fitting(view.getWidth(), view.getHeight(), room.plus(0, -22), imperial);
    this.frame = new Frame(view, corner.plus(0, 13), scale);
  }

  void draw() {
    canvas.layer("detail");
    Point head = frame.corner().plus(0, -6);
    canvas.words(Style.HEADING, head, Letters.fitted("Module " + module.name(), Style.HEADING, 90));
    canvas.words(Style.SMALL_TEXT, head.plus(0, 3.2), "scale " + frame.scale().words());
    seams();
    canvas.shape(Style.MODULE, Spots.SHAPES.toGeometry(Spots.box(module)), frame);
    List<Attachment> held = held();
    zones(held);
    held.forEach(this::clamp);
    distances(held);
  }

  /** All seams in sight; names of those that stand apart. */
  private void seams() {
    List<Run> runs = new ArrayList<>();
    double endMm = Double.NEGATIVE_INFINITY;
    for (SeamLine seam : plane.seams()) {
      if (frame.view().getMinX() < seam.alongM() && seam.alongM() < frame.view().getMaxX()) {
        double[] upM = View.inSight(seam, frame.view());
        Point foot = frame.at(seam.alongM(), upM[0]);
        runs.add(new Run(List.of(foot, frame.at(seam.alongM(), upM[1])), false));
        double halfMm = Letters.widthMm(seam.name(), Style.SMALL_TEXT) / 2;
        if (foot.xMm() - halfMm > endMm) {
          canvas.centred(Style.SMALL_TEXT, foot.plus(0, 2.4), seam.name());
          endMm = foot.xMm() + halfMm + 1;
        }
      }
    }
    canvas.runs(Style.SEAM, runs, About.NOTHING);
  }

  private List<Attachment> held() {
    return field.attachments().stream().filter(attachment -> grip(attachment).isPresent()).toList();
  }

  private Optional<Grip> grip(Attachment attachment) {
    return attachment.grips().stream()
        .filter(grip -> grip.module().name().equals(module.name()))
        .findFirst();
  }

  /** The zones of all rows that its clamps are in; the widest where one of them is in none. */
  private void zones(List<Attachment> held) {
    List<Grip> grips = held.stream().flatMap(a -> grip(a).stream()).toList();
    Set<ClampZone> rows = new LinkedHashSet<>();
    if (grips.isEmpty() || grips.stream().anyMatch(grip -> grip.row().isEmpty())) {
      ClampZones.of(module.type(), module.clampedSide()).widest().ifPresent(rows::add);
    }
    grips.stream()
        .flatMap(grip -> grip.row().stream())
        .sorted(Comparator.comparingDouble((ClampZone row) -> -row.zone().max().m()))
        .forEach(rows::add);
    rows.forEach(this::zones);
  }

  private void zones(ClampZone row) {
    List<Run> runs = new ArrayList<>();
    double minM = row.zone().min().m();
    double maxM = Math.min(row.zone().max().m(), module.alongM() - minM);
    for (double upM : new double[] {module.bottomM(), module.topM()}) {
      runs.add(band(module.leftM() + minM, module.leftM() + maxM, upM));
      runs.add(band(module.rightM() - maxM, module.rightM() - minM, upM));
    }
    canvas.runs(Style.CLAMP_ZONE, runs, About.NOTHING);
  }

  private Run band(double fromM, double toM, double upM) {
    Point left = frame.at(fromM, upM);
    Point right = frame.at(toM, upM);
    double half = ZONE_MM / 2;
    return new Run(
        List.of(left.plus(0, -half), right.plus(0, -half), right.plus(0, half), left.plus(0, half)),
        true);
  }

  private void clamp(Attachment attachment) {
    Point middle = frame.at(attachment.alongM(), attachment.upM());
    Style style =
        attachment.kind() == Attachment.Kind.MID ? Style.ATTACHMENT_MID : Style.ATTACHMENT_END;
    canvas.add(
        Drawn.box(
            style,
            middle.plus(-CLAMP_MM, -CLAMP_MM),
            middle.plus(CLAMP_MM, CLAMP_MM),
            About.NOTHING));
  }

  /** A chain of distances from corner to corner over the clamps of the lower edge. */
  private void distances(List<Attachment> held) {
    TreeSet<Double> places = new TreeSet<>();
    places.add(module.leftM());
    places.add(module.rightM());
    held.stream()
        .filter(attachment -> grip(attachment).orElseThrow().edge() == Grip.Edge.LOWER)
        .forEach(attachment -> places.add(attachment.alongM()));
    Unit unit = Shown.small(Shown.of(field));
    double downMm = frame.opposite().yMm() + 5.5;
    new Chain(canvas, downMm, unit).along(places.stream().toList(), frame);
  }
}
