package clampwise.facts.loads;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Job;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Site;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.stream.Collectors;

/** Asks whether a job says what stands above a plane that ends at a wall or a step. */
final class StepSnows implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      Optional<PlaneEdge> step = new RoofStep(plane).edges().stream().findFirst();
      if (step.isPresent() && !plane.fields().isEmpty()) {
        ask(layout.job(), plane, step.get(), answers);
      }
    }
  }

  private static void ask(Job job, PlaneLayout plane, PlaneEdge step, Answers answers) {
    Optional<Pressure> snow = job.site().flatMap(Site::groundSnow);
    if (snow.isEmpty()) {
      String reason =
          job.unreadable().missing("the ground snow load of the site", "site", "ground-snow");
      answers.missing(StepSnow.class, subject(plane), reason, step.at());
    } else if (job.unreadable().touches("loads", "snow", "higher-roof")) {
      String reason = "what stands above the step could not be read";
      answers.missing(StepSnow.class, subject(plane), reason, step.at());
    } else if (snow.get().pa() > 0) {
      answers.add(fact(job, plane, step));
    }
  }

  private static StepSnow fact(Job job, PlaneLayout plane, PlaneEdge step) {
    return new StepSnow(
        subject(plane),
        subject(plane),
        step.at(),
        Unit.NUMBER,
        plane.name(),
        Choice.word(step.kind()),
        plane.fields().stream().map(FieldLayout::name).collect(Collectors.joining(", ")),
        new RoofStep(plane).higherRoof(job).isPresent());
  }

  private static Subject subject(PlaneLayout plane) {
    return Subjects.plane(plane.name()).part("snow at the step");
  }
}
