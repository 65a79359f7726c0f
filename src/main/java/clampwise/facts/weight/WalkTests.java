package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.calc.statics.ConcentratedLoad;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Substrate;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/** Judges coverings by their load test in the middle of a span: a person walks there. */
final class WalkTests {

  private static final double ROUNDING = 1e-9;

  private final PlaneLayout plane;
  private final Limit person;
  private final Limit part;
  private final Answers answers;

  private WalkTests(PlaneLayout plane, Limits limits, Answers answers) {
    this.plane = plane;
    this.person = limits.get("concentrated-load");
    this.part = limits.get("panel-span-over-sag-least");
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      if (!plane.fields().isEmpty() && plane.panel().filter(WalkTests::spans).isPresent()) {
        new WalkTests(plane, limits, answers).ask(plane.panel().get(), at(layout, plane));
      }
    }
  }

  /** Sheet on a deck spans nothing. */
  private static boolean spans(Panel panel) {
    return panel.substrate().map(on -> on.value() == Substrate.OPEN_PURLINS).orElse(true);
  }

  private static Span at(Layout layout, PlaneLayout plane) {
    return Optional.ofNullable(layout.job().panels().items().get(plane.panelName()))
        .map(item -> item.name().at())
        .orElse(plane.plane().panel().at());
  }

  private void ask(Panel panel, Span at) {
    Optional<Panel.WalkTest> test = panel.walkTest();
    if (test.isEmpty()) {
      missing(
          "no load test of " + plane.panelName() + " in the middle of a span is given (walk-test)",
          at);
    } else if (test.get().load().n() < person.si() * (1 - ROUNDING)) {
      missing(plane.panelName() + " was tested with less than a person", test.get().load().at());
    } else {
      answers.add(fact(test.get()));
    }
  }

  private WalkTestFit fact(Panel.WalkTest test) {
    Work work = new Work(Measure.METRIC);
    new ConcentratedLoad(test.span().m(), test.load().n(), test.sag().m())
        .show(person.si(), part.si(), part.source(), work);
    List<Line> lines = work.lines();
    return new WalkTestFit(
        subject(),
        Subjects.panel(plane.panelName()).part("walk test"),
        test.sag().at(),
        test.sag().unit(),
        plane.panelName(),
        person.si(),
        test.span().m(),
        Snap.m(lines.get(0).result().si()),
        Snap.m(lines.get(1).result().si()),
        Optional.of(part));
  }

  private void missing(String reason, Span at) {
    answers.missing(WalkTestFit.class, subject(), reason, at);
  }

  private Subject subject() {
    return Subjects.plane(plane.name()).part("walk test");
  }
}
