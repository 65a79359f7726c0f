package clampwise.facts.durability;

import clampwise.facts.Subjects;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Obstruction;
import clampwise.job.Panel;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks whether pipes through the sheets let the sheets slide. */
record Penetrations(Weathering weathering) {

  void ask() {
    Unsaid unsaid = new Unsaid(weathering, "the boot of", "boot");
    for (PlaneLayout plane : weathering.layout().planes()) {
      for (Obstacle obstacle : plane.obstacles()) {
        if (isPipe(obstacle)) {
          ask(plane, obstacle, unsaid);
        }
      }
    }
    unsaid.tell(PipeBoot.class, Subject.of("planes").part("boots"));
  }

  static boolean isPipe(Obstacle obstacle) {
    return switch (obstacle.obstruction().kind().value()) {
      case VENT, FLUE, STANDPIPE -> true;
      default -> false;
    };
  }

  private void ask(PlaneLayout plane, Obstacle obstacle, Unsaid unsaid) {
    Optional<Choice<Obstruction.Boot>> boot = obstacle.obstruction().boot();
    Optional<Panel.Clips> clips = plane.panel().flatMap(Panel::clips).map(Choice::value);
    boolean state = weathering.job().roof().isPresent();
    if (boot.isEmpty() && state) {
      unsaid.add(obstacle.name(), "planes", plane.name(), "obstructions", obstacle.name(), "boot");
    } else if (boot.isPresent() && clips.isEmpty()) {
      String what = "how the clips of " + plane.panelName() + " hold it";
      weathering.missing(
          PipeBoot.class,
          subject(plane, obstacle),
          weathering.lacks(what, "panels", plane.panelName(), "clips"));
    } else if (boot.isPresent()) {
      weathering.add(fact(plane, obstacle, boot.get(), clips.get() == Panel.Clips.FLOATING));
    }
  }

  private static PipeBoot fact(
      PlaneLayout plane, Obstacle obstacle, Choice<Obstruction.Boot> boot, boolean slides) {
    return new PipeBoot(
        subject(plane, obstacle),
        subject(plane, obstacle),
        boot.at(),
        Unit.NUMBER,
        obstacle.name(),
        plane.panelName(),
        boot.value() == Obstruction.Boot.RIGID,
        slides);
  }

  private static Subject subject(PlaneLayout plane, Obstacle obstacle) {
    return Subjects.plane(plane.name()).part(obstacle.name()).part("boot");
  }
}
