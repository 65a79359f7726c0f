package clampwise.facts.movement;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Snap;
import clampwise.calc.thermal.Expansion;
import clampwise.calc.thermal.Metal;
import clampwise.calc.thermal.Swing;
import clampwise.facts.Subjects;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Panel.FixedPoint;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Temperature;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/** Holds the movement of floating panels against the travel of their clips. */
final class PanelTravels {

  private final MovingPlane moving;
  private final Panel panel;

  private PanelTravels(MovingPlane moving) {
    this.moving = moving;
    this.panel = moving.panel();
  }

  static void ask(MovingPlane moving) {
    PanelTravels travels = new PanelTravels(moving);
    if (moving.panel().clips().isEmpty()) {
      String reason = moving.missing("whether " + moving.name() + " floats on its clips", "clips");
      travels.missing(reason, moving.at());
    } else if (moving.panel().clips().get().value() == Panel.Clips.FLOATING) {
      travels.ask();
    }
  }

  private void ask() {
    Optional<String> unwritten = unwritten();
    Outcome<Double> run = PanelRun.longestM(moving);
    if (unwritten.isPresent()) {
      missing(unwritten.get(), moving.at());
    } else if (run instanceof NotApplicable<Double> unknown) {
      missing(unknown.reason(), moving.plane().plane().panel().at());
    } else if (moving.swing() instanceof NotApplicable<Swing> unknown) {
      missing(unknown.reason(), moving.swingAt());
    } else {
      Metal metal = moving.sheet().result().orElseThrow();
      moving
          .answers()
          .add(fact(run.result().orElseThrow(), metal, panel.clipTravel().orElseThrow()));
    }
  }

  private Optional<String> unwritten() {
    if (panel.clipTravel().isEmpty()) {
      String what = "how far the clips of " + moving.name() + " let it slide";
      return Optional.of(moving.missing(what, "clip-travel"));
    }
    if (panel.fixedPoint().isEmpty()) {
      String what = "where the panel runs of " + moving.name() + " are fixed";
      return Optional.of(moving.missing(what, "fixed-point"));
    }
    if (moving.isLost("laid-at")) {
      return Optional.of("how warm it was when " + moving.name() + " was laid could not be read");
    }
    return moving.sheet() instanceof NotApplicable<Metal> unknown
        ? Optional.of(unknown.reason())
        : Optional.empty();
  }

  private PanelTravel fact(double runM, Metal metal, Length travel) {
    FixedPoint fixed = panel.fixedPoint().orElseThrow().value();
    double lengthM = fixed == FixedPoint.MIDDLE ? runM / 2 : runM;
    Way way = Way.of(moving);
    double movementM = new Expansion(lengthM, way.swing()).growthM(metal);
    return new PanelTravel(
        subject(),
        Subjects.panel(moving.name()).part("clip travel"),
        travel.at(),
        travel.unit(),
        Map.of("lengthM", length(), "fittingM", length()),
        moving.name(),
        panel.fixedPoint().orElseThrow().toString(),
        way.words(),
        lengthM,
        Snap.m(movementM),
        Snap.m(travel.m()),
        movementM > 0 ? lengthM * travel.m() / movementM : lengthM,
        moving.hottestFrom());
  }

  /** The longer way that the panel goes: from the day it was laid, else the whole swing. */
  private record Way(Swing swing, String words) {

    static Way of(MovingPlane moving) {
      Temperature cold = moving.lowest().orElseThrow();
      Temperature hot = moving.hottest();
      Optional<Temperature> laid = moving.panel().laidAt();
      if (laid.isEmpty()) {
        return between(cold, hot);
      }
      double middle = laid.get().celsius();
      return hot.celsius() - middle >= middle - cold.celsius()
          ? between(laid.get(), hot)
          : between(cold, laid.get());
    }

    private static Way between(Temperature cold, Temperature hot) {
      return new Way(new Swing(cold.celsius(), hot.celsius()), Temperatures.between(cold, hot));
    }
  }

  private Unit length() {
    return Shown.of(moving.plane());
  }

  private void missing(String reason, Span at) {
    moving.missing(PanelTravel.class, subject(), reason, at);
  }

  private Subject subject() {
    return Subjects.plane(moving.plane().name()).part("panel runs");
  }
}
