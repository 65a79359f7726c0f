package clampwise.facts.movement;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Snap;
import clampwise.calc.thermal.Expansion;
import clampwise.calc.thermal.Movement;
import clampwise.calc.thermal.Swing;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.ExpansionTable;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Length;
import clampwise.source.Span;
import java.util.Map;

/** Holds what frames outgrow the roof, in a column that clamps tie, against their joints' slack. */
final class FrameJoints {

  private final MovingPlane moving;
  private final FieldLayout field;
  private final HoldingClamp clamp;

  private FrameJoints(MovingPlane moving, FieldLayout field) {
    this.moving = moving;
    this.field = field;
    this.clamp = HoldingClamp.of(moving, field);
  }

  static void ask(MovingPlane moving) {
    for (FieldLayout field : moving.plane().fields()) {
      Stack.longest(field)
          .filter(stack -> stack.count() > 1)
          .ifPresent(stack -> new FrameJoints(moving, field).ask(stack));
    }
  }

  private void ask(Stack stack) {
    if (clamp.slides().isEmpty()) {
      missing(clamp.slidesUnknown(), clamp.at());
    } else if (!clamp.slides().get()) {
      fast(stack);
    }
  }

  private void fast(Stack stack) {
    if (clamp.slack().isEmpty()) {
      missing(clamp.slackUnknown(), clamp.at());
    } else if (moving.framesAndSheet() instanceof NotApplicable<ExpansionTable.Pair> unknown) {
      missing(unknown.reason(), moving.at());
    } else if (moving.swing() instanceof NotApplicable<Swing> unknown) {
      missing(unknown.reason(), moving.swingAt());
    } else {
      moving.answers().add(fact(stack, clamp.slack().get()));
    }
  }

  private FrameJoint fact(Stack stack, Length slack) {
    ExpansionTable.Pair metals = moving.framesAndSheet().result().orElseThrow();
    Swing swing = moving.swing().result().orElseThrow();
    double lengthM = stack.lengthM() + field.rowGapM();
    double movementM = new Expansion(lengthM, swing).differenceM(metals.one(), metals.other());
    Term whole = Term.length("dL", "difference of growth", movementM);
    Term each = Movement.perJoint(whole, stack.count(), Work.unread());
    return new FrameJoint(
        subject(),
        Subject.of("mid clamp " + clamp.word()).part("slack"),
        clamp.at(),
        slack.unit(),
        Map.of("lengthM", Shown.of(field)),
        field.name(),
        clamp.word(),
        moving.name(),
        stack.count(),
        Temperatures.between(moving.lowest().orElseThrow(), moving.hottest()),
        lengthM,
        movementM,
        Snap.m(each.si()),
        Snap.m(slack.m()),
        moving.hottestFrom());
  }

  private void missing(String reason, Span at) {
    moving.missing(FrameJoint.class, subject(), reason, at);
  }

  private Subject subject() {
    return Subjects.field(field.name()).part("joints of frames");
  }
}
