package clampwise.facts.durability;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Choice;
import clampwise.job.Flag;
import clampwise.job.SurfaceMetal;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/**
 * Finds what drains onto sheet and frames. A metal that lies bare on a sheet that it may not touch
 * has to go anyway and is not asked about its water; a pad under it does not stop the water.
 */
record Runoffs(Weathering weathering, Couples couples) {

  void ask() {
    new ConductorRunoffs(weathering, couples).ask();
    for (PlaneLayout plane : weathering.layout().planes()) {
      for (Obstacle obstacle : plane.obstacles()) {
        obstacle.obstruction().metal().ifPresent(metal -> ask(plane, obstacle, metal));
      }
    }
  }

  private void ask(PlaneLayout plane, Obstacle obstacle, Choice<SurfaceMetal> metal) {
    Outcome<Surface> outcome = new Sheets(weathering).of(plane);
    Optional<Surface> sheet = outcome.result();
    boolean apart = obstacle.obstruction().isolated().filter(Flag::value).isPresent();
    boolean never =
        sheet.filter(known -> couples.isNever(metal.value(), known.metal())).isPresent();
    if (apart || !never) {
      RunoffOrder fact = fact(plane, obstacle, metal, sheet.filter(known -> eats(metal, known)));
      if (outcome instanceof NotApplicable<Surface> unknown
          && isHarmful(metal)
          && fact.eaten() == 0) {
        weathering.missing(RunoffOrder.class, fact.subject(), unknown.reason());
      } else {
        weathering.add(fact);
      }
    }
  }

  /** What harms one of the sheets of roofs harms aluminium too. */
  private boolean isHarmful(Choice<SurfaceMetal> metal) {
    return couples.tables().isHarmedByWater(metal.value(), SurfaceMetal.ALUMINIUM);
  }

  private boolean eats(Choice<SurfaceMetal> metal, Surface sheet) {
    return couples.tables().isHarmedByWater(metal.value(), sheet.metal());
  }

  private RunoffOrder fact(
      PlaneLayout plane, Obstacle obstacle, Choice<SurfaceMetal> metal, Optional<Surface> eaten) {
    boolean eatsFrames = couples.tables().isHarmedByWater(metal.value(), SurfaceMetal.ALUMINIUM);
    List<PlacedModule> below =
        eatsFrames ? below(plane, obstacle.body().getEnvelopeInternal()) : List.of();
    return new RunoffOrder(
        Subjects.plane(plane.name()).part(obstacle.name()),
        metal.at(),
        Unit.NUMBER,
        obstacle.name(),
        Surface.words(metal.value()),
        below.size() + (eaten.isPresent() ? 1 : 0),
        0,
        words(eaten, below),
        "move " + obstacle.name() + " out of the way of the water, or make it of another metal");
  }

  private static String words(Optional<Surface> eaten, List<PlacedModule> below) {
    List<String> words = new ArrayList<>();
    eaten.ifPresent(sheet -> words.add(sheet.words()));
    if (!below.isEmpty()) {
      String first = "module " + below.get(0).name();
      words.add(below.size() == 1 ? first : first + " and " + (below.size() - 1) + " more");
    }
    return words.isEmpty() ? "nothing that it eats" : String.join(", ", words);
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
