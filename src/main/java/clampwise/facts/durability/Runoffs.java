package clampwise.facts.durability;

import clampwise.calc.Outcome;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Choice;
import clampwise.job.SurfaceMetal;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Finds what drains onto the array. A metal that may not even touch the sheet has to go anyway and
 * is not asked about its water.
 */
record Runoffs(Weathering weathering, Couples couples) {

  void ask() {
    for (PlaneLayout plane : weathering.layout().planes()) {
      for (Obstacle obstacle : plane.obstacles()) {
        obstacle.obstruction().metal().ifPresent(metal -> ask(plane, obstacle, metal));
      }
    }
  }

  private void ask(PlaneLayout plane, Obstacle obstacle, Choice<SurfaceMetal> metal) {
    Outcome<Surface> sheet = new Sheets(weathering).of(plane);
    boolean goesAnyway =
        sheet.result().filter(known -> couples.isNever(metal.value(), known.metal())).isPresent();
    if (!goesAnyway) {
      weathering.add(fact(plane, obstacle, metal));
    }
  }

  private RunoffOrder fact(PlaneLayout plane, Obstacle obstacle, Choice<SurfaceMetal> metal) {
    List<PlacedModule> below = below(plane, obstacle.body().getEnvelopeInternal());
    return new RunoffOrder(
        Subjects.plane(plane.name()).part(obstacle.name()),
        metal.at(),
        Unit.NUMBER,
        obstacle.name(),
        Surface.words(metal.value()),
        couples.tables().isHarmedByWater(metal.value(), SurfaceMetal.ALUMINIUM),
        below.size(),
        0,
        below.isEmpty() ? "none" : below.get(0).name());
  }

  /** Modules down the slope from something, in the strip that its water takes; nearest first. */
  static List<PlacedModule> below(PlaneLayout plane, Envelope thing) {
    List<PlacedModule> below = new ArrayList<>();
    for (FieldLayout field : plane.fields()) {
      for (PlacedModule module : field.modules()) {
        boolean inStrip = module.leftM() < thing.getMaxX() && thing.getMinX() < module.rightM();
        if (inStrip && module.bottomM() < thing.getMinY()) {
          below.add(module);
        }
      }
    }
    below.sort(Comparator.comparingDouble(PlacedModule::topM).reversed());
    return below;
  }
}
