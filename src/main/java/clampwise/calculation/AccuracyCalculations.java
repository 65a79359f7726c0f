package clampwise.calculation;

import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.NUMBER;

import clampwise.calc.Outcome;
import clampwise.calc.accuracy.Squareness;
import clampwise.calc.accuracy.ToleranceStack;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Setting out: tolerances that add up, and right angles. */
final class AccuracyCalculations {

  private static final double MOST_MODULES = 100_000.0;

  private AccuracyCalculations() {}

  static List<Calculation> all() {
    return List.of(stack(), diagonal());
  }

  private static Calculation stack() {
    return new Calculation(
        "tolerance-stack",
        "How far the last module of a run may be off, and after how many to measure again",
        "modules set one from the other; the likely case for errors that do not depend on each other",
        List.of(
            Input.of("tolerance", "how far a module may be off, either way", LENGTH, 1e-6),
            Input.of("modules", "modules since the last measured mark", NUMBER, 1.0, MOST_MODULES),
            Input.of("slack", "slack of clamp, gap or clamp zone", LENGTH, 1e-6).orNothing()),
        AccuracyCalculations::stack);
  }

  private static Outcome<List<Term>> stack(Given given, Work work) {
    ToleranceStack stack = new ToleranceStack(given.number("tolerance"));
    int modules = (int) Math.round(given.number("modules"));
    List<Term> results = new ArrayList<>(stack.show(modules, work));
    Optional<Double> slackM = given.find("slack");
    if (slackM.isPresent()) {
      results.addAll(stack.showMost(slackM.get(), work));
    }
    return new Outcome.Result<>(results);
  }

  private static Calculation diagonal() {
    return new Calculation(
        "square-corner",
        "Diagonal of a right angle, and how far a measured one is from square",
        "sides measured along straight lines on one plane",
        List.of(
            Input.of("along", "one side", LENGTH, 1e-3),
            Input.of("up", "the other side", LENGTH, 1e-3),
            Input.of("measured", "diagonal as measured", LENGTH, 1e-3).orNothing()),
        AccuracyCalculations::diagonal);
  }

  private static Outcome<List<Term>> diagonal(Given given, Work work) {
    Squareness corner = new Squareness(given.number("along"), given.number("up"));
    List<Term> results = new ArrayList<>(List.of(corner.show(work)));
    Optional<Double> measuredM = given.find("measured");
    if (measuredM.isPresent()) {
      if (Math.abs(corner.offSquare(measuredM.get())) > 1) {
        return Results.none("the three lengths make no triangle");
      }
      results.add(corner.show(measuredM.get(), work));
    }
    return new Outcome.Result<>(results);
  }
}
