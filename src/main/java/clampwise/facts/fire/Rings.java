package clampwise.facts.fire;

import clampwise.calc.Snap;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/** The room that modules leave round a thing on the roof, or beside it. */
final class Rings {

  private static final double TOUCH_M = 1e-6;

  private final Obstacle thing;
  private final double widthM;
  private final List<PlacedModule> near;

  /**
   * The modules within a width of a thing.
   *
   * @param widthM how far away modules count [m]
   */
  Rings(Obstacle thing, ModuleIndex modules, double widthM) {
    this.thing = thing;
    this.widthM = widthM;
    Envelope box = thing.body().getEnvelopeInternal();
    box.expandBy(widthM);
    this.near =
        modules.near(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()).stream()
            .filter(module -> awayM(module) < widthM - TOUCH_M)
            .toList();
  }

  private double awayM(PlacedModule module) {
    return Blocker.of(thing).distanceM(Blocker.of(module));
  }

  /** Modules nearer than the width. */
  List<PlacedModule> tooNear() {
    return near;
  }

  Optional<PlacedModule> nearest() {
    return near.stream().min(Comparator.comparingDouble(this::awayM));
  }

  /** The least room all round, no more than the width [m]. */
  double allRoundM() {
    return Snap.m(near.stream().mapToDouble(this::awayM).min().orElse(widthM));
  }

  /** The room at the side that has the most, no more than the width [m]. */
  double bestSideM() {
    Envelope box = thing.body().getEnvelopeInternal();
    double left = sideM(box, m -> shares(m, Axis.UP, box), m -> box.getMinX() - m.rightM());
    double right = sideM(box, m -> shares(m, Axis.UP, box), m -> m.leftM() - box.getMaxX());
    double below = sideM(box, m -> shares(m, Axis.ALONG, box), m -> box.getMinY() - m.topM());
    double above = sideM(box, m -> shares(m, Axis.ALONG, box), m -> m.bottomM() - box.getMaxY());
    return Snap.m(Math.max(Math.max(left, right), Math.max(below, above)));
  }

  private double sideM(
      Envelope box,
      java.util.function.Predicate<PlacedModule> faces,
      java.util.function.ToDoubleFunction<PlacedModule> gapM) {
    if (near.stream().anyMatch(module -> box.intersects(Blocker.box(module)))) {
      return 0;
    }
    return near.stream()
        .filter(faces)
        .mapToDouble(gapM)
        .filter(m -> m > -TOUCH_M)
        .min()
        .orElse(widthM);
  }

  private static boolean shares(PlacedModule module, Axis axis, Envelope box) {
    double lowM = axis == Axis.ALONG ? box.getMinX() : box.getMinY();
    double highM = axis == Axis.ALONG ? box.getMaxX() : box.getMaxY();
    return axis.endM(module) > lowM + TOUCH_M && axis.startM(module) < highM - TOUCH_M;
  }
}
