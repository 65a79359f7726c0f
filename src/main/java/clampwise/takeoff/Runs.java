package clampwise.takeoff;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.facts.layout.Layout;
import clampwise.job.Electrical;
import clampwise.job.Quantity.Length;
import clampwise.job.Takeoff;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lengths of conductors, as far as a drawing of the roof gives them. */
record Runs(List<Run> known, List<NotCounted> unknown) {

  static Runs of(Layout layout) {
    Runs runs = new Runs(new ArrayList<>(), new ArrayList<>());
    runs.addCables(layout);
    Optional<Takeoff> given = layout.job().takeoff();
    runs.add("home runs of the strings", given.flatMap(Takeoff::homeRuns), "home-runs");
    runs.add(
        "grounding conductor", given.flatMap(Takeoff::groundingConductor), "grounding-conductor");
    return runs;
  }

  private void addCables(Layout layout) {
    String what = "cables under the modules";
    layout
        .job()
        .electrical()
        .flatMap(Electrical::cables)
        .ifPresentOrElse(
            cables -> addCables(what, CableRuns.of(layout, cables)),
            () -> unknown.add(new NotCounted(what, "not known: give electrical: cables")));
  }

  private void addCables(String what, Outcome<CableRuns> runs) {
    if (runs instanceof Result<CableRuns> found) {
      known.add(new Run(what, found.value().lengthM(), found.value().from()));
    } else if (runs instanceof NotApplicable<CableRuns> none) {
      unknown.add(new NotCounted(what, none.reason()));
    }
  }

  private void add(String what, Optional<Length> length, String key) {
    length.ifPresentOrElse(
        given -> known.add(new Run(what, given.m(), "takeoff: " + key)),
        () -> unknown.add(new NotCounted(what, "not known: give takeoff: " + key)));
  }
}
