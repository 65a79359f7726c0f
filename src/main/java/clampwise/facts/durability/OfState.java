package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.RibBracket;
import clampwise.job.Site;
import java.util.ArrayList;
import java.util.List;

/** The questions that go unasked where a job says nothing about the state of its roof. */
final class OfState {

  private OfState() {}

  static List<Class<? extends Fact>> unasked(Weathering weathering) {
    List<Class<? extends Fact>> types = new ArrayList<>(always());
    if (weathering.job().site().flatMap(Site::moduleTemperatures).isEmpty()) {
      types.add(OpenRackHeat.class);
      types.add(HeatGap.class);
    }
    for (PlaneLayout plane : weathering.layout().planes()) {
      if (!plane.fields().isEmpty()) {
        addOf(plane, types);
      }
    }
    return types.stream().distinct().toList();
  }

  private static List<Class<? extends Fact>> always() {
    return List.of(
        RoofLife.class,
        WoodContact.class,
        GraphiteMarks.class,
        WetMortar.class,
        WarrantyLetter.class,
        DebrisTrap.class);
  }

  private static void addOf(PlaneLayout plane, List<Class<? extends Fact>> types) {
    if (plane.plane().gutter().isEmpty()) {
      types.add(EaveDistance.class);
    }
    for (FieldLayout field : plane.fields()) {
      if (field.part().filter(part -> part instanceof RibBracket).isPresent()) {
        types.add(SwarfLeft.class);
      }
    }
    for (Obstacle obstacle : plane.obstacles()) {
      if (Penetrations.isPipe(obstacle) && obstacle.obstruction().boot().isEmpty()) {
        types.add(PipeBoot.class);
      }
    }
  }
}
