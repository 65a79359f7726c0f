package clampwise.facts.layout;

import static clampwise.job.Plane.EdgeKind.EAVE;
import static clampwise.job.Plane.EdgeKind.RAKE;
import static clampwise.job.Plane.EdgeKind.RIDGE;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.ZoneWidth.Widths;
import clampwise.catalogue.CodeTables;
import clampwise.job.Building.RoofShape;
import clampwise.job.Plane.EdgeKind;
import clampwise.job.Site.LoadCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Draws the wind zones of a plane. */
final class ZoneMap {

  private static final String LOW_SLOPE = "30.3-2A";
  private static final String STEEP_GABLE = "30.3-2D";
  private static final String LOW_MONOSLOPE = "30.3-5A";
  private static final double LEAST_AREA_M2 = 1e-6;

  private final WindRoof roof;
  private final Outline outline;
  private final CodeTables codes;
  private final PlaneReading reading;

  ZoneMap(WindRoof roof, Outline outline, CodeTables codes, PlaneReading reading) {
    this.roof = roof;
    this.outline = outline;
    this.codes = codes;
    this.reading = reading;
  }

  WindZones draw() {
    return roof.code().filter(LoadCode.EN_1991::equals).isPresent() ? european() : american();
  }

  private WindZones european() {
    Outcome<List<ZoneArea>> drawn =
        EnPlane.of(roof, outline.area(), codes.windOfEn())
            .then(plane -> new EnZones(plane, outline.area().orElseThrow()).draw(codes.windOfEn()));
    return drawn instanceof NotApplicable<List<ZoneArea>> none
        ? WindZones.unknown(none.reason())
        : WindZones.of(((Result<List<ZoneArea>>) drawn).value());
  }

  private WindZones american() {
    Outcome<Widths> widths = roof.widths();
    if (widths instanceof NotApplicable<Widths> reason) {
      return WindZones.unknown(reason.reason());
    }
    if (outline.area().isEmpty()) {
      return WindZones.unknown(reading.outlineUnknown());
    }
    Widths known = ((Result<Widths>) widths).value();
    return isDrawn(known)
        ? WindZones.of(areas(known))
        : WindZones.unknown("figure " + known.figure() + " is not part of this version");
  }

  private boolean isDrawn(Widths widths) {
    return shape() != RoofShape.MONOSLOPE
        || List.of(LOW_SLOPE, LOW_MONOSLOPE).contains(widths.figure());
  }

  private List<ZoneArea> areas(Widths widths) {
    double planPerSlope = Math.cos(roof.slopeRad().orElseThrow());
    PlanDrawing plan = new PlanDrawing(outline.area().orElseThrow(), outline.edges(), planPerSlope);
    List<ZoneArea> areas = new ArrayList<>();
    List<ZoneLayer> layers = layers(plan, widths);
    List<Geometry> taken = LayerCut.of(plan.area(), layers);
    for (int i = 0; i < layers.size(); i++) {
      ZoneLayer layer = layers.get(i);
      Geometry onSlope = PlaneAxes.stretchedUp(taken.get(i), 1 / planPerSlope);
      areas.add(new ZoneArea(layer.name(), layer.severity(), tidy(onSlope), figure(widths)));
    }
    return areas.stream()
        .filter(zone -> !zone.area().isEmpty())
        .sorted(ZoneArea.WORST_FIRST)
        .toList();
  }

  private List<ZoneLayer> layers(PlanDrawing plan, Widths widths) {
    ZoneFigures figures = new ZoneFigures(plan, widths.edgeM());
    boolean later = isLaterEdition();
    boolean steep = widths.figure().equals(STEEP_GABLE);
    if (widths.figure().equals(LOW_SLOPE)) {
      return ZoneFigures.lowSlope(plan, perimeter(), widths);
    }
    return switch (shape()) {
      case HIP -> later ? figures.hip22() : figures.hip16();
      case MONOSLOPE -> figures.monoslope();
      default ->
          !later ? figures.gable16(steep) : steep ? figures.steepGable22() : figures.gable22();
    };
  }

  /** The upper edge of a flat or monoslope roof is an edge of the building; a ridge is not. */
  private Set<EdgeKind> perimeter() {
    return shape() == RoofShape.FLAT || shape() == RoofShape.MONOSLOPE
        ? Set.of(EAVE, RAKE, RIDGE)
        : Set.of(EAVE, RAKE);
  }

  private RoofShape shape() {
    return roof.shape().orElseThrow();
  }

  private boolean isLaterEdition() {
    return roof.code().filter(LoadCode.ASCE_7_22::equals).isPresent();
  }

  private String figure(Widths widths) {
    return "ASCE " + (isLaterEdition() ? "7-22" : "7-16") + " figure " + widths.figure();
  }

  /** Without slivers that come out of cutting, and with corners free of rounding noise. */
  static Geometry tidy(Geometry cut) {
    List<Polygon> kept = new ArrayList<>();
    for (int i = 0; i < cut.getNumGeometries(); i++) {
      if (cut.getGeometryN(i) instanceof Polygon piece && piece.getArea() > LEAST_AREA_M2) {
        kept.add(piece);
      }
    }
    Geometry tidy =
        kept.size() == 1
            ? kept.get(0).copy()
            : PlaneAxes.shapes().createMultiPolygon(kept.toArray(Polygon[]::new)).copy();
    return PlaneAxes.snapped(tidy);
  }
}
