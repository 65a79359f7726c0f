package clampwise.facts.movement;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Panel;
import clampwise.source.Span;
import java.util.Optional;

/** Measures the runs of sheet that is screwed through to its supports. */
final class ThroughFastenedRuns {

  private final MovingPlane moving;

  private ThroughFastenedRuns(MovingPlane moving) {
    this.moving = moving;
  }

  static void ask(MovingPlane moving) {
    ThroughFastenedRuns runs = new ThroughFastenedRuns(moving);
    Optional<Choice<Panel.Clips>> clips = moving.panel().clips();
    if (clips.isEmpty()) {
      String what = "whether " + moving.name() + " floats on its clips";
      runs.missing(moving.missing(what, "clips"), moving.at());
    } else if (clips.get().value() == Panel.Clips.THROUGH_FASTENED) {
      runs.ask(clips.get());
    }
  }

  private void ask(Choice<Panel.Clips> clips) {
    Outcome<Double> run = PanelRun.longestM(moving);
    if (run instanceof Result<Double> known) {
      moving.answers().add(fact(clips, known.value()));
    } else if (run instanceof NotApplicable<Double> unknown) {
      missing(unknown.reason(), moving.plane().plane().panel().at());
    }
  }

  private ThroughFastenedRun fact(Choice<Panel.Clips> clips, double runM) {
    Limit most = moving.limits().get("through-fastened-run-most");
    return new ThroughFastenedRun(
        subject(),
        Subjects.panel(moving.name()).part("clips"),
        clips.at(),
        Shown.of(moving.plane()),
        moving.name(),
        moving.plane().name(),
        runM,
        Snap.m(most.si()),
        Optional.of(most));
  }

  private void missing(String reason, Span at) {
    moving.missing(ThroughFastenedRun.class, subject(), reason, at);
  }

  private Subject subject() {
    return Subjects.plane(moving.plane().name()).part("panel runs");
  }
}
