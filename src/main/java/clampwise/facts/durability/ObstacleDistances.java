package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Obstruction;
import clampwise.job.Quantity.Length;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Holds modules against things that water piles up at and against flues. Modules over such a thing,
 * or nearer than its own clearance, are found elsewhere and are no answers here.
 */
final class ObstacleDistances {

  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final String NO_MODULE = "no module";

  private final Weathering weathering;
  private final PlaneLayout plane;
  private final ModuleIndex index;

  private ObstacleDistances(Weathering weathering, PlaneLayout plane) {
    this.weathering = weathering;
    this.plane = plane;
    this.index = ModuleIndex.of(plane);
  }

  static void ask(Weathering weathering) {
    for (PlaneLayout plane : weathering.layout().planes()) {
      List<Obstacle> asked = plane.obstacles().stream().filter(ObstacleDistances::isAsked).toList();
      if (!asked.isEmpty() && !plane.fields().isEmpty()) {
        ObstacleDistances distances = new ObstacleDistances(weathering, plane);
        asked.forEach(distances::ask);
      }
    }
  }

  private static boolean isAsked(Obstacle obstacle) {
    return isDam(obstacle) || isFlueAlone(obstacle);
  }

  /** Whether water and debris from above are held up by it. */
  private static boolean isDam(Obstacle obstacle) {
    return switch (obstacle.obstruction().kind().value()) {
      case CURB, UNIT, SKYLIGHT, HATCH, SMOKE_VENT -> true;
      default -> false;
    };
  }

  private static boolean isFlueAlone(Obstacle obstacle) {
    return obstacle.obstruction().kind().value() == Obstruction.Kind.FLUE
        && obstacle.obstruction().clearance().isEmpty();
  }

  private void ask(Obstacle obstacle) {
    if (isDam(obstacle)) {
      askUphill(obstacle);
    } else {
      askFlue(obstacle);
    }
  }

  private void askUphill(Obstacle obstacle) {
    Limit least = weathering.limit("uphill-distance-least");
    Envelope body = obstacle.body().getEnvelopeInternal();
    double topM = body.getMaxY();
    boolean none = true;
    for (PlacedModule module :
        near(body.getMinX(), topM, body.getMaxX(), topM + Snap.m(least.si()))) {
      double distanceM = Snap.m(module.bottomM() - topM);
      boolean beside = module.rightM() <= body.getMinX() || module.leftM() >= body.getMaxX();
      if (!beside && distanceM >= clearanceM(obstacle) && distanceM < Snap.m(least.si())) {
        weathering.add(uphill(obstacle, module.name(), module.at(), distanceM, least));
        none = false;
      }
    }
    if (none) {
      weathering.add(uphill(obstacle, NO_MODULE, obstacle.at(), Snap.m(least.si()), least));
    }
  }

  private List<PlacedModule> near(double leftM, double bottomM, double rightM, double topM) {
    return index.near(leftM, bottomM, rightM, topM);
  }

  private static double clearanceM(Obstacle obstacle) {
    return obstacle.obstruction().clearance().map(Length::m).orElse(0.0);
  }

  private UphillDistance uphill(
      Obstacle obstacle, String module, Span at, double distanceM, Limit least) {
    return new UphillDistance(
        subject(obstacle).part(module).part("uphill"),
        subject(obstacle).part("uphill"),
        at,
        unit(),
        module,
        obstacle.name(),
        distanceM,
        Snap.m(least.si()),
        Snap.m(Math.max(0, Snap.m(least.si()) - distanceM)),
        Optional.of(least));
  }

  private void askFlue(Obstacle obstacle) {
    Limit least = weathering.limit("flue-distance-least");
    Envelope reach = new Envelope(obstacle.body().getEnvelopeInternal());
    reach.expandBy(Snap.m(least.si()));
    boolean none = true;
    for (PlacedModule module :
        near(reach.getMinX(), reach.getMinY(), reach.getMaxX(), reach.getMaxY())) {
      Geometry box = SHAPES.toGeometry(new ModuleReach(module).box());
      double distanceM = Snap.m(box.distance(obstacle.body()));
      if (distanceM > 0 && distanceM < Snap.m(least.si())) {
        weathering.add(flue(obstacle, module.name(), module.at(), distanceM, least));
        none = false;
      }
    }
    if (none) {
      weathering.add(flue(obstacle, NO_MODULE, obstacle.at(), Snap.m(least.si()), least));
    }
  }

  private FlueDistance flue(
      Obstacle obstacle, String module, Span at, double distanceM, Limit least) {
    return new FlueDistance(
        subject(obstacle).part(module).part("flue"),
        subject(obstacle).part("flue"),
        at,
        unit(),
        module,
        obstacle.name(),
        distanceM,
        Snap.m(least.si()),
        Snap.m(Math.max(0, Snap.m(least.si()) - distanceM)),
        Optional.of(least));
  }

  private Subject subject(Obstacle obstacle) {
    return Subjects.plane(plane.name()).part(obstacle.name());
  }

  private Unit unit() {
    return Shown.small(Shown.of(plane));
  }
}
